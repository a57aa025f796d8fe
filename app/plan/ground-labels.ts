import { type Box, type Item, type ItemOf, type Point, placed, told, word } from "../../src/index.ts";
import type { View } from "../store/editor.ts";
import { type Label, labelBox, overlap, readable } from "./label.ts";
import { labelRooms, type Room } from "./label-room.ts";
import { LETTERS, type Measure } from "./lettering.ts";
import { standingBoxes } from "./standing-boxes.ts";
import { toScreen } from "./viewport.ts";

type Ground = ItemOf<"ground">;

const LETTERING = LETTERS.note;
const PADDING = 6;
/** Places for the words in their room, from its middle (0) to its sides (±1): what stands on it is mostly in the middle. */
const PLACES: readonly Point[] = [
  [0, 0],
  [1, 1],
  [-1, 1],
  [1, -1],
  [-1, -1],
  [0, 1],
  [0, -1],
  [1, 0],
  [-1, 0],
];

/** What the ground is called. */
export const groundWords = ({ name, cover }: Ground): string => name || told(COVER_WORDS[cover]);

const COVER_WORDS = {
  soil: word("bare soil"),
  lawn: word("lawn"),
  weeds: word("weeds"),
  bark: word("bark"),
  "loose-gravel": word("loose gravel"),
  "firm-gravel": word("firm gravel"),
  paving: word("paving"),
  deck: word("deck"),
  roof: word("roof"),
} as const satisfies Record<Ground["cover"], string>;

/** The label of each patch of ground, where nothing that stands would cover it; none where there is no such place. */
export function groundLabels(items: readonly Item[], view: View, measure: Measure): readonly Label[] {
  const grounds = items.filter((item) => item.kind === "ground");
  if (grounds.length === 0) return [];
  const standing = standingBoxes(items, view).map(({ box }) => box);
  return grounds.flatMap((ground) => groundLabel(ground, standing, view, measure) ?? []);
}

function groundLabel(ground: Ground, standing: readonly Box[], view: View, measure: Measure): Label | null {
  const text = groundWords(ground);
  const [width, height] = [measure(text, LETTERING), LETTERING.size];
  const turn = readable(ground.turn);
  for (const room of labelRooms(ground.shape)) {
    for (const at of placesIn(room, ground, view, width, height)) {
      const label: Label = { lines: [{ text, letters: LETTERING }], at, turn, width, height };
      if (standing.every((box) => !overlap(box, labelBox(label)))) return label;
    }
  }
  return null;
}

function placesIn(room: Room, ground: Ground, view: View, width: number, height: number): readonly Point[] {
  const slackX = room.width / 2 - (width / 2 + PADDING) / view.scale;
  const slackY = room.length / 2 - (height / 2 + PADDING) / view.scale;
  if (slackX < 0 || slackY < 0) return [];
  const { centre } = room;
  return PLACES.map(([x, y]) =>
    toScreen(view, placed([centre[0] + x * slackX, centre[1] + y * slackY], ground.at, ground.turn)),
  );
}
