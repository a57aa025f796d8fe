import { word } from "../../../src/index.ts";

/** Keys of the plan and of its list twin, as the help tells them; `plan-keys.ts` is what they do. */
export const HAND_KEYS: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: word("Tab"), does: word("To the next thing in the list of the plan") },
  { keys: word("Space"), does: word("Choose it; with Shift, choose it as well") },
  { keys: word("Enter"), does: word("Choose it and go to its card") },
  { keys: word("Arrows"), does: word("Move what is chosen by 1 in or 1 cm") },
  { keys: word("Shift + arrows"), does: word("Move it by 1 ft or 10 cm") },
  { keys: word("Arrows, with nothing chosen"), does: word("Move the paper") },
  { keys: word("[ and ]"), does: word("Turn it by 15° left or right") },
  { keys: word("Shift + [ and ]"), does: word("Turn it by 1°") },
  {
    keys: "C",
    does: word("Hold the next corner of a free outline, a line or the yard: arrows and Delete mean it"),
  },
  { keys: "V", does: word("Put a corner into the edge after the one held") },
  {
    keys: "P",
    does: word("Hold the next crop of the bed chosen: arrows move its place, Delete takes it out"),
  },
  { keys: word("Ctrl or ⌘ + arrows"), does: word("Make the place held wider or longer") },
  { keys: word("Page Up, Page Down"), does: word("One to the front, one to the back") },
  { keys: word("Ctrl or ⌘ + D"), does: word("Make another like it") },
  { keys: word("Ctrl or ⌘ + A"), does: word("Choose everything") },
  { keys: word("Delete"), does: word("Take it away; while a corner is held, that corner") },
  { keys: word("Escape"), does: word("Drop what the hand holds, then choose nothing") },
];
