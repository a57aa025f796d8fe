import { create } from "zustand";
import { DARK, INK, type Inks, LIGHT, layInks, SHARPER } from "../style/ink.ts";
import { remember, remembered } from "./remembered.ts";
import { systemInks } from "./system-inks.ts";

/** Which drawing board is worked on: as the device says, by day, or under a lamp. */
export type BoardChoice = "device" | "light" | "dark";
export const BOARDS: readonly BoardChoice[] = ["device", "light", "dark"];

/** Read as well by `public/board.js`, which lays the board before the first paint. */
const KEY = "bedwright-board";

interface Board {
  readonly choice: BoardChoice;
  /** The colours as laid: another value whenever they are others. */
  readonly inks: Inks;
}

/** The board's choice and colours. Kept on the device: a garden looks the same whoever opens it. */
export const useBoard = create<Board>()(() => ({ choice: "device", inks: INK }));

export function chooseBoard(choice: BoardChoice): void {
  remember(KEY, choice);
  useBoard.setState({ choice });
  lay();
}

/** What the device asks for. Where it does not say, nothing special. */
const asks = (query: string): boolean => globalThis.matchMedia?.(query).matches ?? false;

const WISHES = ["(prefers-color-scheme: dark)", "(prefers-contrast: more)", "(forced-colors: active)"];

/** Takes up the choice that was kept, and follows what the device asks for from now on. */
export function startBoard(): void {
  useBoard.setState({ choice: remembered(KEY, BOARDS) ?? "device" });
  lay();
  for (const wish of WISHES) globalThis.matchMedia?.(wish).addEventListener("change", lay);
}

/** Whether the board worked on is the dark one. */
export const isDark = ({ inks }: Pick<Board, "inks">): boolean => inks.paper === DARK.paper;

/** The colours for a choice on a device. */
export function inksFor(
  choice: BoardChoice,
  wants: { readonly dark: boolean; readonly sharp: boolean },
): Inks {
  const board = choice === "dark" || (choice === "device" && wants.dark) ? "dark" : "light";
  const inks = board === "dark" ? DARK : LIGHT;
  return wants.sharp ? { ...inks, ...SHARPER[board] } : inks;
}

function lay(): void {
  const { choice } = useBoard.getState();
  const { dataset } = document.documentElement;
  if (choice === "device") delete dataset.board;
  else dataset.board = choice;
  const [dark, sharp, forced] = WISHES.map(asks) as [boolean, boolean, boolean];
  const inks = forced ? systemInks() : inksFor(choice, { dark, sharp });
  layInks(inks);
  useBoard.setState({ inks });
  tellBrowser(inks.paper);
}

/** The browser's own bar takes the paper's colour. */
function tellBrowser(paper: string): void {
  for (const meta of document.querySelectorAll<HTMLMetaElement>('meta[name="theme-color"]')) {
    meta.content = paper;
  }
}
