/** Keys of the plan and of its list twin, as the help lists them; `plan-keys.ts` is what they do. */
export const HAND_KEYS: readonly { readonly keys: string; readonly does: string }[] = [
  { keys: "Tab", does: "To the next thing in the list of the plan" },
  { keys: "Space", does: "Choose it; with Shift, choose it as well" },
  { keys: "Enter", does: "Choose it and go to its card" },
  { keys: "Arrows", does: "Move what is chosen by 1 in or 1 cm" },
  { keys: "Shift + arrows", does: "Move it by 1 ft or 10 cm" },
  { keys: "Arrows, with nothing chosen", does: "Move the paper" },
  { keys: "[ and ]", does: "Turn it by 15° left or right" },
  { keys: "Shift + [ and ]", does: "Turn it by 1°" },
  {
    keys: "C",
    does: "Hold the next corner of a free outline, a line or the yard: arrows and Delete mean it",
  },
  { keys: "V", does: "Put a corner into the edge after the one held" },
  { keys: "P", does: "Hold the next crop of the bed chosen: arrows move its place, Delete takes it out" },
  { keys: "Ctrl or ⌘ + arrows", does: "Make the place held wider or longer" },
  { keys: "Page Up, Page Down", does: "One to the front, one to the back" },
  { keys: "Ctrl or ⌘ + D", does: "Make another like it" },
  { keys: "Ctrl or ⌘ + A", does: "Choose everything" },
  { keys: "Delete", does: "Take it away; while a corner is held, that corner" },
  { keys: "Escape", does: "Drop what the hand holds, then choose nothing" },
];
