import { useState } from "react";
import { type ItemOf, nameOf, TIMBERS, type Units } from "../../../../src/index.ts";
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

const TIMBER_CHOICES: readonly Choice<string>[] = TIMBERS.map(({ id, label, besideFood }) => ({
  value: id,
  label:
    besideFood === "fit" ? label : `${label} (${besideFood === "unfit" ? "not beside food" : "with care"})`,
}));

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
        label="Board"
        value={typing ? ANOTHER : wall.board}
        choices={[
          ...boardChoices(units, wall.board, own),
          { value: ANOTHER, label: "A board I have, by its sizes…" },
        ]}
        onCommit={(board) => {
          setTyping(board === ANOTHER);
          if (board !== ANOTHER) set("board", { ...wall, board });
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
        label="Timber"
        value={wall.timber}
        choices={TIMBER_CHOICES}
        {...(timber ? { note: `${timber.life.join(" to ")} years in the soil. ${timber.note}` } : {})}
        onCommit={(id) => set("timber", { ...wall, timber: id })}
      />
      <NumberField
        label="Courses"
        whole
        least={1}
        most={MOST_COURSES}
        value={wall.courses}
        onCommit={(courses) => set("courses", { ...wall, courses })}
      />
      <ChoiceField
        label="Corners"
        value={wall.corner}
        choices={[
          { value: "ends-between-sides", label: "Ends between the sides" },
          { value: "ends-over-sides", label: "Ends over the sides" },
        ]}
        onCommit={(corner) => set("corners", { ...wall, corner })}
      />
      <ChoiceField
        label="Cap rail"
        value={wall.capRail ?? NO_RAIL}
        choices={[
          { value: NO_RAIL, label: "None" },
          ...boardChoices(units, wall.capRail, own).map(({ value, label }) => ({
            value,
            label: `${label}, flat on top`,
          })),
        ]}
        onCommit={(board) => set("cap rail", { ...wall, capRail: board === NO_RAIL ? null : board })}
      />
      <ChoiceField
        label="Kept from bowing by"
        value={wall.bracing}
        choices={[
          { value: "none", label: "Nothing" },
          { value: "stakes", label: "Stakes" },
          { value: "stakes-and-ties", label: "Stakes and ties across" },
        ]}
        onCommit={(bracing) => set("bracing", { ...wall, bracing })}
      />
      <CheckField
        label="A post in each corner, inside"
        checked={wall.cornerPosts}
        note={wall.cornerPosts ? "The boards are screwed to it." : "The boards are screwed into end grain."}
        onCommit={(cornerPosts) => set("corner posts", { ...wall, cornerPosts })}
      />
    </>
  );
}

/** Makes the wall of a board of the gardener's own, and keeps that board with those on offer: one step of history. */
function takeOwnBoard(bed: ItemOf<"bed">, wall: Made<"boards">, board: string): void {
  const { garden, commit } = useEditor.getState();
  commit(`Set board of ${nameOf(bed)}`, [
    { op: "set-garden", changes: { cutting: withOwnBoard(garden.cutting, board) } },
    { op: "set", id: bed.id, changes: { wall: { ...wall, board } } },
  ]);
}
