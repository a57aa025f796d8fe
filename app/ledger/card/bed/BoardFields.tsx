import { useState } from "react";
import { type ItemOf, nameOf, say, TIMBERS, type Units } from "../../../../src/index.ts";
import { useEditor } from "../../../store/use-editor.ts";
import { CheckField } from "../../fields/CheckField.tsx";
import { type Choice, ChoiceField } from "../../fields/ChoiceField.tsx";
import { NumberField } from "../../fields/NumberField.tsx";
import { boardChoices, withOwnBoard } from "./board-choices.ts";
import { OwnBoardFields } from "./OwnBoardFields.tsx";
import { type Made, MOST_COURSES, type SetWall } from "./usual-walls.ts";

interface BoardProps {
  readonly bed: ItemOf<"bed">;
  readonly wall: Made<"boards">;
  readonly units: Units;
  readonly set: SetWall;
}

const timberChoices = (): readonly Choice<string>[] =>
  TIMBERS.map(({ id, label, besideFood }) => ({ value: id, label: withCare(label, besideFood) }));

function withCare(label: string, besideFood: (typeof TIMBERS)[number]["besideFood"]): string {
  if (besideFood === "fit") return label;
  return besideFood === "unfit" ? say`${label} (not beside food)` : say`${label} (with care)`;
}

/** What a choice of board is while its sizes are being typed. */
const ANOTHER = "another";
const NO_RAIL = "none";

/** What a wall of boards is made of and how it is put together. */
export function BoardFields({ bed, wall, units, set }: BoardProps) {
  const own = useEditor((state) => state.garden.cutting.ownBoards);
  const [typing, setTyping] = useState(false);
  const timber = TIMBERS.find(({ id }) => id === wall.timber);
  return (
    <>
      <ChoiceField
        label={say`Board`}
        value={typing ? ANOTHER : wall.board}
        choices={[
          ...boardChoices(units, wall.board, own),
          { value: ANOTHER, label: say`A board I have, by its sizes…` },
        ]}
        onCommit={(board) => {
          setTyping(board === ANOTHER);
          if (board !== ANOTHER) set(say`board`, { ...wall, board });
        }}
      />
      {typing ? (
        <OwnBoardFields
          units={units}
          onAdd={(board) => {
            setTyping(false);
            takeOwnBoard(bed, wall, board);
          }}
          onLeave={() => setTyping(false)}
        />
      ) : null}
      <ChoiceField
        label={say`Timber`}
        value={wall.timber}
        choices={timberChoices()}
        {...(timber
          ? { note: say`${timber.life[0]} to ${timber.life[1]} years in the soil. ${timber.note}` }
          : {})}
        onCommit={(id) => set(say`timber`, { ...wall, timber: id })}
      />
      <NumberField
        label={say`Courses`}
        whole
        least={1}
        most={MOST_COURSES}
        value={wall.courses}
        onCommit={(courses) => set(say`courses`, { ...wall, courses })}
      />
      <ChoiceField
        label={say`Corners`}
        value={wall.corner}
        choices={[
          { value: "ends-between-sides", label: say`Ends between the sides` },
          { value: "ends-over-sides", label: say`Ends over the sides` },
        ]}
        onCommit={(corner) => set(say`corners`, { ...wall, corner })}
      />
      <ChoiceField
        label={say`Cap rail`}
        value={wall.capRail ?? NO_RAIL}
        choices={[
          { value: NO_RAIL, label: say`None` },
          ...boardChoices(units, wall.capRail, own).map(({ value, label }) => ({
            value,
            label: say`${label}, flat on top`,
          })),
        ]}
        onCommit={(board) => set(say`cap rail`, { ...wall, capRail: board === NO_RAIL ? null : board })}
      />
      <ChoiceField
        label={say`Kept from bowing by`}
        value={wall.bracing}
        choices={[
          { value: "none", label: say`Nothing` },
          { value: "stakes", label: say`Stakes` },
          { value: "stakes-and-ties", label: say`Stakes and ties across` },
        ]}
        onCommit={(bracing) => set(say`bracing`, { ...wall, bracing })}
      />
      <CheckField
        label={say`A post in each corner, inside`}
        checked={wall.cornerPosts}
        note={
          wall.cornerPosts ? say`The boards are screwed to it.` : say`The boards are screwed into end grain.`
        }
        onCommit={(cornerPosts) => set(say`corner posts`, { ...wall, cornerPosts })}
      />
    </>
  );
}

/** Makes the wall of a board of the gardener's own, and keeps that board with those on offer: one step of history. */
function takeOwnBoard(bed: ItemOf<"bed">, wall: Made<"boards">, board: string): void {
  const { garden, commit } = useEditor.getState();
  commit(say`Set ${say`board`} of ${nameOf(bed)}`, [
    { op: "set-garden", changes: { cutting: withOwnBoard(garden.cutting, board) } },
    { op: "set", id: bed.id, changes: { wall: { ...wall, board } } },
  ]);
}
