import { type Site, word } from "../../../src/index.ts";
import type { Choice } from "../fields/ChoiceField.tsx";

type Ground = Site["ground"];

export const COVERS: readonly Choice<Ground["cover"]>[] = [
  { value: "soil", label: word("Soil") },
  { value: "lawn", label: word("Lawn") },
  { value: "weeds", label: word("Weeds") },
  { value: "bark", label: word("Bark or wood chips") },
  { value: "loose-gravel", label: word("Loose gravel") },
  { value: "firm-gravel", label: word("Firm gravel, compacted") },
  { value: "paving", label: word("Paving or concrete") },
  { value: "deck", label: word("Deck") },
  { value: "roof", label: word("Roof") },
];

export const BURROWING: readonly Choice<Ground["burrowing"]>[] = [
  { value: "none", label: word("None") },
  { value: "gopher", label: word("Gophers") },
  { value: "mole", label: word("Moles") },
  { value: "vole", label: word("Voles") },
  { value: "rat", label: word("Rats") },
];
