import type { TaskKind } from "./types.ts";

/** What each kind of task is called where tasks are listed by kind. */
export const TASK_KIND_LABELS: Readonly<Record<TaskKind, string>> = {
  "top-up": "Topping up",
  mulch: "Mulch",
  sow: "Sowing, planting",
  harvest: "Picking",
  "cover-crop": "Cover crop",
  bioassay: "Pot test",
  water: "Watering",
  winter: "Winter",
  renewal: "Renewals",
  care: "Care",
};
