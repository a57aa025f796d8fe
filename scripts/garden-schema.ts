import { toJsonSchema } from "@valibot/to-json-schema";
import { CROP_IDS, isCropId } from "../src/garden/crop-ids.ts";
import { gardenSchema, VERSION } from "../src/garden/garden.ts";
import { isBoard } from "../src/garden/kinds/bed.ts";
import { BOARD_SIZES } from "../src/garden/timber-sizes.ts";

/** Checks by function that come down to a table, and the words in it. */
const TABLES = new Map<unknown, readonly string[]>([[isCropId, CROP_IDS]]);

/** A board of the table, or any other by its sizes in millimetres. */
const BOARD_NAME = `^(?:${BOARD_SIZES.map(({ name }) => name).join("|")}|[0-9.]+x[0-9.]+mm)$`;

/**
 * The garden document as JSON Schema (draft 7), for other people's programs and editors. Made from the very schema that
 * files are read with; what JSON Schema cannot say (outlines that cross themselves, ids used twice) the reader alone checks.
 */
export function gardenJsonSchema(): Record<string, unknown> {
  const { $schema, ...schema } = toJsonSchema(gardenSchema, {
    target: "draft-07",
    typeMode: "input",
    // Brands, read-only marks and all other checks by function mean nothing to JSON Schema.
    ignoreActions: ["brand", "readonly", "transform", "finite"],
    overrideAction: ({ valibotAction, jsonSchema }) => {
      if (valibotAction.type !== "check") return undefined;
      const requirement = Reflect.get(valibotAction, "requirement");
      if (requirement === isBoard) return { ...jsonSchema, pattern: BOARD_NAME };
      const words = TABLES.get(requirement);
      return words ? { ...jsonSchema, enum: [...words] } : jsonSchema;
    },
  });
  return {
    $schema,
    title: "Bedwright garden",
    description: `One yard with all that stands in it, version ${VERSION}. Lengths in millimetres, turns in degrees clockwise; x to the right, y down the plan.`,
    ...schema,
  };
}

export const gardenSchemaText = (): string => `${JSON.stringify(gardenJsonSchema(), null, 2)}\n`;
