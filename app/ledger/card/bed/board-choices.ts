import {
  BOARD_SIZES,
  type BoardSize,
  boardSize,
  formatShort,
  type Garden,
  say,
  type Units,
} from "../../../../src/index.ts";
import type { Choice } from "../../fields/ChoiceField.tsx";

/** "2×6", or "32 mm × 17.5 cm" for one of the gardener's own. */
export function boardName(name: string, units: Units): string {
  const size = boardSize(name);
  return size && isOwn(name) ? measured(size, units) : name.replace("x", "×");
}

/** A board in full, as it stands in a list of choices: "2×6 (1½ in × 5½ in)". */
export function boardWords(name: string, units: Units): string {
  const size = boardSize(name);
  if (!size || isOwn(name)) return say`${boardName(name, units)}, own`;
  return `${boardName(name, units)} (${measured(size, units)})`;
}

const measured = ({ thickness, height }: BoardSize, units: Units): string =>
  `${formatShort(thickness, units)} × ${formatShort(height, units)}`;

/** The cutting settings with this board among the gardener's own, once. */
export const withOwnBoard = (cutting: Garden["cutting"], board: string): Garden["cutting"] =>
  cutting.ownBoards.includes(board) ? cutting : { ...cutting, ownBoards: [...cutting.ownBoards, board] };

/** Boards of the garden's own system, then the gardener's own; the one in use in any case. */
export function boardChoices(
  units: Units,
  inUse: string | null,
  own: readonly string[],
): readonly Choice<string>[] {
  const sold = BOARD_SIZES.filter(({ system, name }) => system === units || name === inUse);
  const names = new Set([...sold.map(({ name }) => name), ...own, ...(inUse === null ? [] : [inUse])]);
  return [...names].map((name) => ({ value: name, label: boardWords(name, units) }));
}

const tabled = new Set(BOARD_SIZES.map(({ name }) => name));
const isOwn = (name: string): boolean => !tabled.has(name);
