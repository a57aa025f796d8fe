import { bedsArePlantedAndWatered } from "./beds-are-planted-and-watered.ts";
import { bedsKnowTheirStage } from "./beds-know-their-stage.ts";
import type { Migration, RawGarden } from "./migration.ts";

/** Every step there is, oldest first. */
export const MIGRATIONS: readonly Migration[] = [bedsKnowTheirStage, bedsArePlantedAndWatered];

/** A step that could not make sense of a garden. */
export class MigrationError extends Error {
  override readonly name = "MigrationError";
}

/**
 * Brings a document of an earlier version up to date, one version at a time.
 *
 * @param garden its `version` is a whole number from 1 up to `target`
 * @throws RangeError if a step is missing: the chain itself is broken
 * @throws MigrationError if a step fails on this garden
 */
export function migrate(
  garden: RawGarden,
  target: number,
  migrations: readonly Migration[] = MIGRATIONS,
): RawGarden {
  let now = garden;
  for (let version = Number(garden.version); version < target; version++) {
    const migration = migrations.find(({ from }) => from === version);
    if (!migration) throw new RangeError(`no step leads on from version ${version}`);
    now = { ...attempt(migration, now), version: version + 1 };
  }
  return now;
}

function attempt(migration: Migration, garden: RawGarden): RawGarden {
  try {
    return migration.step(garden);
  } catch (cause) {
    throw new MigrationError(`"${migration.name}" failed`, { cause });
  }
}
