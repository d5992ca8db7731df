// A build in the fragment of an address: packed, and in letters that every mail program leaves alone.
const mark = '#build='
async function through(
  bytes: Uint8Array<ArrayBuffer>,
  stream: CompressionStream | DecompressionStream
): Promise<Uint8Array<ArrayBuffer>> {
  return new Uint8Array(await new Response(new Blob([bytes]).stream().pipeThrough(stream)).arrayBuffer())
}
export async function fragmentOf(text: string): Promise<string> {
  const packed = await through(new TextEncoder().encode(text), new CompressionStream('deflate-raw'))
  let binary = ''
  for (const byte of packed) binary += String.fromCharCode(byte)
  return mark + btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replaceAll('=', '')
}
/// The build of a fragment; nothing where it carries none or is torn.
export async function buildIn(fragment: string): Promise<string | undefined> {
  if (!fragment.startsWith(mark)) return undefined
  try {
    const binary = atob(fragment.slice(mark.length).replaceAll('-', '+').replaceAll('_', '/'))
    const bytes = Uint8Array.from(binary, c => c.charCodeAt(0))
    return new TextDecoder('utf-8', { fatal: true }).decode(
      await through(bytes, new DecompressionStream('deflate-raw'))
    )
  } catch {
    return undefined
  }
}
