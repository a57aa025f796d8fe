/**
 * Divides a length that no board on sale can give into equal parts, joined end to end on a post.
 * @param longest that can be had, above 0
 * @returns one part, the length itself, where it fits
 */
export function inParts(length: number, longest: number): { readonly parts: number; readonly each: number } {
  const parts = Math.max(1, Math.ceil(length / longest - 1e-9));
  return { parts, each: length / parts };
}
