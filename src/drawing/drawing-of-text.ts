/**
 * A drawing that came as text, as the bytes that are read. Text has no encoding any more, so that one that it declares must not be
 * believed: a byte order mark outranks it.
 */
export function drawingOfText(text: string): Uint8Array {
  const declares = /^\s*<\?xml[^>]*encoding/u.test(text)
  return new TextEncoder().encode(declares ? `\ufeff${text}` : text)
}
