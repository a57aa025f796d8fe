import { type Garden, say, type Takeoff, takeoffCsv } from "../../../src/index.ts";
import { offerFile } from "../../keeping/file.ts";
import { fileNameOf } from "../../sharing/file-name.ts";

/** Hands the list to the browser as a table for a spreadsheet. */
export function saveCsv(takeoff: Takeoff, garden: Garden): void {
  offerFile(
    fileNameOf(say`${garden.name} takeoff`, "csv"),
    takeoffCsv(takeoff, garden),
    "text/csv;charset=utf-8",
  );
}
