import { say } from "../../src/index.ts";

/** Letters of a file's name, all endings apart: with four bytes each they stay below the 255 that file systems allow. */
const LONGEST = 60;
/** What Windows keeps for its devices, whatever the ending. Source: Microsoft, Naming Files, Paths, and Namespaces. */
const DEVICES = /^(con|prn|aux|nul|com\d|lpt\d)$/;

/** A garden's name as the name of a file: letters and digits of any script, the rest dashes. */
export function fileNameOf(name: string, ending: string): string {
  const letters = name
    .normalize("NFKC")
    .toLowerCase()
    .replace(/[^\p{L}\p{M}\p{N}]+/gu, "-");
  const plain = [...letters]
    .slice(0, LONGEST)
    .join("")
    .replace(/^-+|-+$/g, "");
  const free = DEVICES.test(plain) ? `${plain}-${say`garden`}` : plain;
  return `${free || say`garden`}.${ending}`;
}
