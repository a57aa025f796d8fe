import type { Site } from "../../../src/index.ts";
import type { Choice } from "../fields/ChoiceField.tsx";

type Ground = Site["ground"];

export const COVERS: readonly Choice<Ground["cover"]>[] = [
  { value: "soil", label: "Soil" },
  { value: "lawn", label: "Lawn" },
  { value: "weeds", label: "Weeds" },
  { value: "bark", label: "Bark or wood chips" },
  { value: "loose-gravel", label: "Loose gravel" },
  { value: "firm-gravel", label: "Firm gravel, compacted" },
  { value: "paving", label: "Paving or concrete" },
  { value: "deck", label: "Deck" },
  { value: "roof", label: "Roof" },
];

export const BURROWING: readonly Choice<Ground["burrowing"]>[] = [
  { value: "none", label: "None" },
  { value: "gopher", label: "Gophers" },
  { value: "mole", label: "Moles" },
  { value: "vole", label: "Voles" },
  { value: "rat", label: "Rats" },
];
