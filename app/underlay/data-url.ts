/** A picture as a `data:` address, for the one place it stands in text: a garden file. */
export async function asDataUrl(blob: Blob): Promise<string> {
  const bytes = new Uint8Array(await blob.arrayBuffer());
  const parts: string[] = [];
  // In parts, for a function takes only so many arguments; of a length that base64 does not pad.
  for (let at = 0; at < bytes.length; at += PART) {
    parts.push(btoa(String.fromCharCode(...bytes.subarray(at, at + PART))));
  }
  return `data:${blob.type};base64,${parts.join("")}`;
}

const PART = 3 * 8192;

/** @returns null for what is no picture in base64 */
export function blobOfDataUrl(address: string): Blob | null {
  const [, type, code] = /^data:(image\/(?:png|jpeg|webp));base64,(.*)$/s.exec(address) ?? [];
  if (!type || !code) return null;
  try {
    const bytes = Uint8Array.from(atob(code), (letter) => letter.charCodeAt(0));
    return new Blob([bytes], { type });
  } catch {
    return null;
  }
}
