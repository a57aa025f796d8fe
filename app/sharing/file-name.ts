/** A garden's name as the name of a file: letters and digits of any script, the rest dashes. */
export function fileNameOf(name: string, ending: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/[^\p{L}\p{N}]+/gu, "-")
    .replace(/^-+|-+$/g, "")
    .toLowerCase();
  return `${plain || "garden"}.${ending}`;
}
