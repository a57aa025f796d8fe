import type { ChangeEvent } from "react";
import { boundsOf, type Garden, say, type Underlay } from "../../src/index.ts";
import { openDialog } from "../dialogs/open-dialog.ts";
import { CardSection } from "../ledger/card/CardSection.tsx";
import { CheckField } from "../ledger/fields/CheckField.tsx";
import { LengthField } from "../ledger/fields/LengthField.tsx";
import { NumberField } from "../ledger/fields/NumberField.tsx";
import { choosePicture, PICTURE_TYPES } from "./choose-picture.ts";
import { wholeTurn } from "./placing.ts";
import { StrengthField } from "./StrengthField.tsx";
import { setUnderlay } from "./set-underlay.ts";
import { useShownPicture } from "./shown-picture.ts";
import { tellTrouble } from "./trouble.ts";
import "./underlay.css";

/** The photo or scan beneath the plan: chosen, placed, faded, locked and removed. */
export function UnderlaySection({ garden }: { readonly garden: Garden }) {
  const { underlay } = garden;
  const gist = underlay ? (underlay.locked ? say`locked` : say`can be dragged`) : say`none`;
  return (
    <CardSection title={say`Picture beneath the plan`} gist={gist}>
      {underlay ? <Placed underlay={underlay} garden={garden} /> : <None />}
    </CardSection>
  );
}

const None = () => (
  <div className="wide">
    <p>
      {say`A photo from above, a survey or a site plan, to draw over. Choose a PNG, JPEG or WebP, or drop it on the plan. It stays on this device.`}
    </p>
    <p className="underlay-doings">
      <FileButton label={say`Choose a picture`} />
    </p>
  </div>
);

function FileButton({ label }: { readonly label: string }) {
  const onFile = (event: ChangeEvent<HTMLInputElement>) => {
    const file = event.target.files?.[0];
    // The same file must be choosable again after it has been mended.
    event.target.value = "";
    if (file) void choosePicture(file);
  };
  return (
    <label className="button file-button">
      {label}
      <input type="file" accept={PICTURE_TYPES} onChange={onFile} />
    </label>
  );
}

interface PlacedProps {
  readonly underlay: Underlay;
  readonly garden: Garden;
}

function Placed({ underlay, garden }: PlacedProps) {
  const missing = useShownPicture((shown) => shown.state === "missing");
  const { minX, minY } = boundsOf(garden.yard);
  const { pixels, at, turn, mmPerPixel, opacity, locked } = underlay;
  const set = (what: string, changes: Partial<Underlay>) =>
    tellTrouble(setUnderlay(what, { ...underlay, ...changes }));

  return (
    <>
      {missing ? (
        <p className="wide field-problem" role="alert">
          {say`The picture is not on this device. Its place is kept: choose it again, or remove it.`}
        </p>
      ) : (
        <p className="wide underlay-doings">
          <button type="button" className="button main" onClick={() => openDialog("underlay")}>
            {say`Set the scale by two points`}
          </button>
        </p>
      )}
      <LengthField
        label={say`Width on the ground`}
        value={pixels[0] * mmPerPixel}
        onCommit={(mm) => set(say`Scale the picture beneath`, { mmPerPixel: mm / pixels[0] })}
      />
      <NumberField
        label={say`Turn`}
        unit="°"
        least={-180}
        most={180}
        decimals={2}
        value={wholeTurn(turn)}
        note={say`clockwise`}
        onCommit={(degrees) => set(say`Turn the picture beneath`, { turn: degrees })}
      />
      <LengthField
        label={say`Middle from the left`}
        may="negative"
        value={at[0] - minX}
        onCommit={(mm) => set(say`Move the picture beneath`, { at: [minX + mm, at[1]] })}
      />
      <LengthField
        label={say`Middle from the top`}
        may="negative"
        value={at[1] - minY}
        onCommit={(mm) => set(say`Move the picture beneath`, { at: [at[0], minY + mm] })}
      />
      <StrengthField underlay={underlay} opacity={opacity} />
      <CheckField
        label={say`Locked`}
        checked={locked}
        note={say`it stays where it is when the plan is dragged over`}
        onCommit={(on) =>
          set(on ? say`Lock the picture beneath` : say`Unlock the picture beneath`, { locked: on })
        }
      />
      <p className="wide underlay-doings">
        <FileButton label={missing ? say`Choose it again` : say`Exchange it`} />
        <button
          type="button"
          className="button"
          onClick={() => tellTrouble(setUnderlay(say`Remove the picture beneath`, null))}
        >
          {say`Remove it`}
        </button>
      </p>
    </>
  );
}
