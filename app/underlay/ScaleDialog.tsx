import { useState } from "react";
import { distance, formatLength, type Point, say, told, type Underlay, word } from "../../src/index.ts";
import { Dialog } from "../dialogs/Dialog.tsx";
import { closeDialog } from "../dialogs/open-dialog.ts";
import { ChoiceField } from "../ledger/fields/ChoiceField.tsx";
import { LengthField } from "../ledger/fields/LengthField.tsx";
import { NumberField } from "../ledger/fields/NumberField.tsx";
import { useEditor } from "../store/use-editor.ts";
import { LEAST_APART, type Lie, scaled, turnedTo } from "./placing.ts";
import { setUnderlay } from "./set-underlay.ts";
import { useShownPicture } from "./shown-picture.ts";
import { TwoPoints } from "./TwoPoints.tsx";
import "./underlay.css";

/** Scales the picture beneath the plan by two points of it and the distance between them. */
export function ScaleDialog() {
  const underlay = useEditor((state) => state.garden.underlay);
  const image = useShownPicture((shown) => shown.image);
  return (
    <Dialog title={say`Scale of the picture`}>
      {underlay && image ? (
        <ScaleForm underlay={underlay} image={image} />
      ) : (
        <p>{say`There is no picture beneath the plan to be scaled. Choose one under Site first.`}</p>
      )}
    </Dialog>
  );
}

type Turning = "none" | Lie;
const TURNINGS = [
  { value: "none", label: word("Leave it as it lies") },
  { value: "level", label: word("A to B lies level") },
  { value: "upright", label: word("A to B lies upright") },
] as const satisfies readonly { readonly value: Turning; readonly label: string }[];
const turnings = () => TURNINGS.map(({ value, label }) => ({ value, label: told(label) }));

interface Props {
  readonly underlay: Underlay;
  readonly image: ImageBitmap;
}

/** Where the points are until they are set: well apart, and in sight. */
const firstPoints = ([width, height]: Underlay["pixels"]): readonly [Point, Point] => [
  [Math.round(width * 0.25), Math.round(height * 0.5)],
  [Math.round(width * 0.75), Math.round(height * 0.5)],
];

function ScaleForm({ underlay, image }: Props) {
  const units = useEditor((state) => state.garden.units);
  const [points, setPoints] = useState(() => firstPoints(underlay.pixels));
  const [typed, setTyped] = useState<number | null>(null);
  const [turning, setTurning] = useState<Turning>("none");
  const [problem, setProblem] = useState<string | null>(null);
  const [a, b] = points;
  const apart = distance(a, b);
  // Until a length is typed it is what the scale makes it now: what is typed then shows as a change of it.
  const length = typed ?? apart * underlay.mmPerPixel;
  const tooNear = apart < LEAST_APART;
  const setPoint = (which: 0 | 1, at: Point) => setPoints(which === 0 ? [at, b] : [a, at]);

  const put = () => {
    if (tooNear) return;
    const turnedFirst = turning === "none" ? underlay : turnedTo(underlay, points, turning);
    const failed = setUnderlay(say`Scale the picture beneath`, scaled(turnedFirst, points, length));
    setProblem(failed);
    if (failed) return;
    useEditor.getState().say(say`The picture is to scale`);
    closeDialog();
  };

  return (
    <>
      <p>
        {say`Set A and B on two points whose distance you know, as far apart as can be: the corners of the house, two fence posts, the ends of a scale bar.`}
      </p>
      <TwoPoints image={image} pixels={underlay.pixels} points={points} onMove={setPoint} />
      <div className="underlay-fields">
        <LengthField label={say`A to B measures`} value={length} onCommit={setTyped} />
        <ChoiceField label={say`Turn`} value={turning} choices={turnings()} onCommit={setTurning} />
        <PointFields letter="A" point={a} pixels={underlay.pixels} onMove={(at) => setPoint(0, at)} />
        <PointFields letter="B" point={b} pixels={underlay.pixels} onMove={(at) => setPoint(1, at)} />
      </div>
      <p role="status">
        {tooNear
          ? say`A and B lie too near to each other to tell a scale.`
          : say`The whole picture is then ${formatLength((underlay.pixels[0] * length) / apart, units)} wide.`}
      </p>
      {problem ? (
        <p className="field-problem" role="alert">
          {problem}
        </p>
      ) : null}
      <p className="dialog-actions">
        <button type="button" className="button main" aria-disabled={tooNear} onClick={put}>
          {say`Set the scale`}
        </button>
      </p>
    </>
  );
}

interface PointFieldsProps {
  readonly letter: "A" | "B";
  readonly point: Point;
  readonly pixels: Underlay["pixels"];
  readonly onMove: (at: Point) => void;
}

/** A point by numbers, for those who cannot or would not point. */
const PointFields = ({ letter, point: [x, y], pixels: [width, height], onMove }: PointFieldsProps) => (
  <>
    <NumberField
      label={say`${letter} from the left`}
      unit="px"
      least={0}
      most={width}
      decimals={1}
      value={x}
      onCommit={(to) => onMove([to, y])}
    />
    <NumberField
      label={say`${letter} from the top`}
      unit="px"
      least={0}
      most={height}
      decimals={1}
      value={y}
      onCommit={(to) => onMove([x, to])}
    />
  </>
);
