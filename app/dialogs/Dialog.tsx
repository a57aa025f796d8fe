import { type PointerEvent, type ReactNode, useId, useLayoutEffect, useRef } from "react";
import { say } from "../../src/index.ts";
import { closeDialog } from "./open-dialog.ts";

interface Props {
  readonly title: string;
  readonly children: ReactNode;
}

/** The platform's own modal dialog: it keeps the focus, closes on Escape and gives the focus back. */
export function Dialog({ title, children }: Props) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();

  // Closed before it leaves the page, so that the browser gives the focus back to where it was.
  useLayoutEffect(() => {
    const element = dialog.current;
    if (element && !element.open) element.showModal();
    return () => element?.close();
  }, []);

  // The sheet inside fills the dialog: what hits the dialog element itself hits the page behind it. Both ends of the
  // press count, or marking text out over the edge would close it.
  const pressedOutside = useRef(false);
  const onPointerDown = (event: PointerEvent<HTMLDialogElement>) => {
    pressedOutside.current = event.target === event.currentTarget;
  };
  const onPointerUp = (event: PointerEvent<HTMLDialogElement>) => {
    if (pressedOutside.current && event.target === event.currentTarget) closeDialog();
  };

  return (
    <dialog
      ref={dialog}
      className="dialog"
      aria-labelledby={titleId}
      onPointerDown={onPointerDown}
      onPointerUp={onPointerUp}
      onCancel={(event) => {
        event.preventDefault();
        closeDialog();
      }}
    >
      <div>
        <header className="dialog-head">
          <h2 id={titleId}>{title}</h2>
          <button type="button" className="button" onClick={closeDialog}>{say`Close`}</button>
        </header>
        <div className="dialog-body">{children}</div>
      </div>
    </dialog>
  );
}
