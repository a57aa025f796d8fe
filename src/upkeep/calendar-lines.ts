import { plainText } from "../garden/plain-text.ts";

/** Content lines of a calendar file: text made safe, and lines broken as RFC 5545 asks. */

/** Octets of a line without its end (RFC 5545, section 3.1). */
const LONGEST_LINE = 75;

/** Octets of a character in UTF-8. */
function octets(character: string): number {
  const code = character.codePointAt(0) ?? 0;
  if (code < 0x80) return 1;
  if (code < 0x800) return 2;
  return code < 0x10000 ? 3 : 4;
}

/**
 * Breaks a content line into lines of at most 75 octets, each after the first beginning with a blank; never within a
 * character.
 * @source RFC 5545, section 3.1
 */
export function folded(line: string): string {
  const lines: string[] = [];
  let current = "";
  let length = 0;
  for (const character of line) {
    const size = octets(character);
    if (length + size > LONGEST_LINE) {
      lines.push(current);
      current = " ";
      length = 1;
    }
    current += character;
    length += size;
  }
  return [...lines, current].join("\r\n");
}

/**
 * A value of type TEXT: backslash, semicolon and comma escaped, line ends as \n, and nothing that is no character or turns
 * the direction of what follows.
 * @source RFC 5545, section 3.3.11
 */
export const textValue = (text: string): string =>
  text
    .split(/\r\n|\r|\n/)
    .map((line) => plainText(line).replace(/[\\;,]/g, "\\$&"))
    .join("\\n");
