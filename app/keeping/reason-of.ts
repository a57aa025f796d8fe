import { say } from "../../src/index.ts";

/** Another tab runs an older Bedwright and keeps hold of the storage. */
export class PagesOfTwoVersions extends Error {
  override readonly name = "PagesOfTwoVersions";
}

/** Why something could not be kept and what to do: words for the person whose work it is. */
export function reasonOf(error: unknown): string {
  if (error instanceof PagesOfTwoVersions) {
    return say`Another tab runs an older Bedwright. Close that tab or reload it.`;
  }
  switch (error instanceof DOMException ? error.name : "") {
    case "QuotaExceededError":
      return say`This device’s storage is full. Save the garden to a file, or remove gardens you no longer need.`;
    case "VersionError":
      return say`The gardens here were kept by a newer Bedwright. Reload the page to get it.`;
    case "SecurityError":
    case "InvalidStateError":
    case "NotFoundError":
      return say`This browser keeps nothing here: a private window, or storage is turned off. Save the garden to a file before you close the page.`;
    default:
      return say`This device would not keep the last changes. Save the garden to a file to be safe. Keeping is tried again by itself.`;
  }
}
