import { toldWhenRead, word } from "../words/say.ts";
import { TASK_KINDS, type TaskKind } from "./types.ts";

/** What each kind of task is called where tasks are listed by kind. */
export const TASK_KIND_LABELS: Readonly<Record<TaskKind, string>> = toldWhenRead(
  {
    "top-up": word("Topping up"),
    mulch: word("Mulch"),
    sow: word("Sowing, planting"),
    harvest: word("Picking"),
    "cover-crop": word("Cover crop"),
    bioassay: word("Pot test"),
    water: word("Watering"),
    winter: word("Winter"),
    renewal: word("Renewals"),
    care: word("Care"),
  },
  ...TASK_KINDS,
);
