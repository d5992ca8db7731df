"""What ngspice_discharge.py and power_scipy.py share: asking the probe, and the tables of a pack from those of its cell."""
import json
import subprocess


def ask(probe, cases, *more):
    """The probe's answers, each with the fields of its case."""
    lines = "\n".join(";".join(str(field) for field in case) for case in cases)
    run = subprocess.run([probe, *more], input=lines + "\n", capture_output=True, text=True)
    if run.returncode != 0:
        raise SystemExit("probe: " + run.stderr)
    answers = [json.loads(line) for line in run.stdout.splitlines()]
    if len(answers) != len(cases):
        raise SystemExit(f"{len(cases)} cases in, {len(answers)} answers out")
    for case, answer in zip(cases, answers):
        answer["name"] = ";".join(str(field) for field in case)
        answer["series"], answer["Ah"], answer["ohm"], answer["exponent"], answer["weak"], answer["stop"] = case[1:7]
        answer["load"] = case[7:]
    return answers


def cell_table(answer, share):
    """Charge drawn in Ah and volts of one cell or block whose capacity is `share` of the label; rising charge."""
    capacity = answer["Ah"] * share
    points = list(zip(answer["soc"], (v * answer["cells_inside"] for v in answer["ocv"])))
    if share != 1:
        points = list(zip(answer["reversed_soc"], answer["reversed_ocv"])) + points
    return [((1 - soc) * capacity, v) for soc, v in reversed(points)]


def cell_groups(answer):
    """(how many, table) of the alike cells of the string."""
    if not answer["weak"]:
        return [(answer["series"], cell_table(answer, 1))]
    return [(answer["series"] - 1, cell_table(answer, 1)), (1, cell_table(answer, answer["weak"]))]
