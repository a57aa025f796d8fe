import { told } from "../../../src/index.ts";
import type { Choice } from "./ChoiceField.tsx";

/** Choices out of a table in English, as they are called in the language spoken. */
export const toldChoices = <T extends string>(choices: readonly Choice<T>[]): readonly Choice<T>[] =>
  choices.map(({ value, label }) => ({ value, label: told(label) }));
