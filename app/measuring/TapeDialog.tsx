import { useId, useMemo, useState } from "react";
import {
  type Garden,
  type Item,
  type KnownPoint,
  knownPoints,
  nameOf,
  outlineOf,
  ownPoints,
  type Point,
  placesByTape,
  say,
  subtract,
} from "../../src/index.ts";
import { Dialog } from "../dialogs/Dialog.tsx";
import { closeDialog } from "../dialogs/open-dialog.ts";
import { ChoiceField } from "../ledger/fields/ChoiceField.tsx";
import { LengthField } from "../ledger/fields/LengthField.tsx";
import { useEditor } from "../store/use-editor.ts";
import { Sketch, type SketchLine } from "./Sketch.tsx";

/** Puts the selected thing where two tapes say it stands. */
export function TapeDialog() {
  const garden = useEditor((s) => s.garden);
  const selection = useEditor((s) => s.selection);
  const item = garden.items.find(({ id }) => selection.has(id));
  return (
    <Dialog title={item ? say`Place ${nameOf(item)} by tape` : say`Place by tape`}>
      {item ? (
        <TapeForm garden={garden} item={item} />
      ) : (
        <p>{say`Select the thing that was measured first.`}</p>
      )}
    </Dialog>
  );
}

interface FormProps {
  readonly garden: Garden;
  readonly item: Item;
}

interface Found {
  readonly places: readonly [Point, Point] | null;
  readonly problem: string | null;
}

function TapeForm({ garden, item }: FormProps) {
  const points = useMemo(() => knownPoints(garden, item.id), [garden, item.id]);
  const own = useMemo(() => ownPoints(item), [item]);
  const [fromA, setFromA] = useState(points[0]!.key);
  const [fromB, setFromB] = useState(points[1]!.key);
  const [upTo, setUpTo] = useState(own[0]!.key);
  const [chosenSide, setSide] = useState<Side | null>(null);
  const byKey = (list: readonly KnownPoint[], key: string) =>
    list.find((point) => point.key === key) ?? list[0]!;
  const [a, b, measured] = [byKey(points, fromA), byKey(points, fromB), byKey(own, upTo)];
  const [typedA, setA] = useState<number | null>(null);
  const [typedB, setB] = useState<number | null>(null);
  // Until a length is typed it is what the plan says now: what is typed then shows as a change of it.
  const lengthA = typedA ?? apart(a.at, measured.at);
  const lengthB = typedB ?? apart(b.at, measured.at);
  const { places, problem } = find(a.at, lengthA, b.at, lengthB);
  // Until somebody says otherwise it is the place nearer to where the thing is drawn.
  const side = chosenSide ?? (places ? nearerSide(places, measured.at) : "left");
  const chosen = places?.[side === "left" ? 0 : 1];

  const put = () => {
    if (!chosen) return;
    const by = subtract(chosen, measured.at);
    useEditor.getState().commit(say`Place ${nameOf(item)} by tape`, [{ op: "move", id: item.id, by }]);
    useEditor.getState().say(say`${nameOf(item)} placed`);
    closeDialog();
  };

  return (
    <>
      <p>{say`Choose two points that are drawn already, and type how far each is from the thing by tape.`}</p>
      <div className="measured">
        <Points label={say`From A`} points={points} value={a.key} onCommit={setFromA} />
        <LengthField label={say`A measures`} value={lengthA} onCommit={setA} />
        <Points label={say`From B`} points={points} value={b.key} onCommit={setFromB} />
        <LengthField label={say`B measures`} value={lengthB} onCommit={setB} />
      </div>
      {own.length > 1 ? (
        <Points label={say`Measured up to`} points={own} value={measured.key} onCommit={setUpTo} />
      ) : null}
      {problem ? (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      ) : null}
      <Sketch
        label={places ? say`The two places there are, 1 and 2` : say`The two points measured from`}
        lines={linesOf(garden, item, chosen ? subtract(chosen, measured.at) : null, [a.at, b.at], chosen)}
        marks={[
          { key: "a", at: a.at, letter: "A", strong: false },
          { key: "b", at: b.at, letter: "B", strong: false },
          ...(places ?? []).map((at, i) => ({
            key: `place ${i}`,
            at,
            letter: String(i + 1),
            strong: at === chosen,
          })),
        ]}
      />
      {places ? <Sides side={side} onChoose={setSide} /> : null}
      <p className="dialog-actions">
        <button
          type="button"
          className="button main"
          aria-disabled={!chosen}
          onClick={put}
        >{say`Put it there`}</button>
      </p>
    </>
  );
}

type Side = "left" | "right";

const nearerSide = ([left, right]: readonly [Point, Point], to: Point): Side =>
  apart(left, to) <= apart(right, to) ? "left" : "right";

const apart = (p: Point, q: Point): number => Math.hypot(p[0] - q[0], p[1] - q[1]);

function find(a: Point, lengthA: number, b: Point, lengthB: number): Found {
  try {
    const places = placesByTape({ from: a, length: lengthA }, { from: b, length: lengthB });
    return { places, problem: null };
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return { places: null, problem: say`That cannot be: ${error.message}.` };
  }
}

interface PointsProps {
  readonly label: string;
  readonly points: readonly KnownPoint[];
  readonly value: string;
  readonly onCommit: (key: string) => void;
}

const Points = ({ label, points, value, onCommit }: PointsProps) => (
  <ChoiceField
    label={label}
    value={value}
    choices={points.map((point) => ({ value: point.key, label: point.label }))}
    onCommit={onCommit}
  />
);

/** Two circles cross twice: only whoever measured knows on which side. */
function Sides(props: { readonly side: Side; readonly onChoose: (side: Side) => void }) {
  const name = useId();
  const choices = [
    { value: "left", label: say`1, to the left from A to B` },
    { value: "right", label: say`2, to the right from A to B` },
  ] as const;
  return (
    <fieldset className="measured-sides">
      <legend>{say`Which of the two places`}</legend>
      {choices.map(({ value, label }) => (
        <label key={value}>
          <input
            type="radio"
            name={name}
            checked={props.side === value}
            onChange={() => props.onChoose(value)}
          />{" "}
          {label}
        </label>
      ))}
    </fieldset>
  );
}

function linesOf(
  garden: Garden,
  item: Item,
  by: Point | null,
  from: readonly Point[],
  to: Point | undefined,
): SketchLine[] {
  const buildings = garden.items.flatMap((other): SketchLine[] =>
    (other.kind === "house" || other.kind === "shed" || other.kind === "bed") && other.id !== item.id
      ? [{ key: other.id, points: outlineOf(other), closed: true, tone: "quiet" }]
      : [],
  );
  const moved: SketchLine[] =
    by && "shape" in item
      ? [
          {
            key: "moved",
            points: outlineOf(item).map(([x, y]): Point => [x + by[0], y + by[1]]),
            closed: true,
            tone: "strong",
          },
        ]
      : [];
  const tapes: SketchLine[] = to
    ? from.map((point, i) => ({ key: `tape ${i}`, points: [point, to], closed: false, tone: "dashed" }))
    : [];
  return [
    { key: "yard", points: garden.yard, closed: true, tone: "plain" },
    ...buildings,
    ...moved,
    ...tapes,
  ];
}
