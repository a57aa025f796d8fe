import { type FormEvent, useEffect, useId, useRef, useState } from "react";
import { say } from "../../src/index.ts";
import { useLedger } from "../ledger/ledger-state.ts";
import { useEditor } from "../store/use-editor.ts";
import { degreesText, readDegrees } from "./north.ts";

interface Props {
  readonly north: number;
  readonly onNorth: (degrees: number) => void;
  readonly onClose: () => void;
}

/** The field that the north arrow opens: degrees clockwise from up the plan. */
export function NorthField({ north, onNorth, onClose }: Props) {
  const [text, setText] = useState(degreesText(north));
  const [wrong, setWrong] = useState<string | null>(null);
  const input = useRef<HTMLInputElement>(null);
  const form = useRef<HTMLFormElement>(null);
  const id = useId();

  useEffect(() => {
    input.current?.select();
    const away = (event: PointerEvent) => {
      if (!(event.target instanceof Node) || !form.current?.contains(event.target)) onClose();
    };
    window.addEventListener("pointerdown", away, { capture: true });
    return () => window.removeEventListener("pointerdown", away, { capture: true });
  }, [onClose]);

  const enter = (event: FormEvent) => {
    event.preventDefault();
    const degrees = readDegrees(text);
    if (degrees === null) {
      setWrong(say`Degrees, such as 15 or -30.`);
      return;
    }
    if (degrees !== north) onNorth(degrees);
    onClose();
  };

  const toCompass = () => {
    useLedger.getState().wantNorth(true);
    useEditor.getState().turnTo("site");
    onClose();
  };

  return (
    <form
      ref={form}
      className="north-field"
      role="dialog"
      aria-label={say`Direction of north`}
      onSubmit={enter}
      onKeyDown={(event) => {
        if (event.key !== "Escape") return;
        event.stopPropagation();
        onClose();
      }}
    >
      <label htmlFor={id}>{say`North, degrees right of up`}</label>
      <input
        ref={input}
        id={id}
        inputMode="text"
        autoComplete="off"
        value={text}
        aria-invalid={wrong !== null}
        aria-describedby={wrong ? `${id}-wrong` : undefined}
        onChange={(event) => setText(event.target.value)}
      />
      <button type="submit">{say`Set`}</button>
      <p>
        {say`True north, by which the sun goes. A compass points beside it: put its reading right by the declination`}{" "}
        <button type="button" className="link" onClick={toCompass}>
          {say`under Site`}
        </button>
        .
      </p>
      {wrong && (
        <p className="wrong" id={`${id}-wrong`} role="alert">
          {wrong}
        </p>
      )}
    </form>
  );
}
