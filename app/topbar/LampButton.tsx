import { say } from "../../src/index.ts";
import { chooseBoard, isDark, useBoard } from "../device/board.ts";

/** Turns the lamp on and off: the dark board for the evening. "As the device" stands under Site. */
export function LampButton() {
  const dark = useBoard(isDark);
  const words = dark ? say`To the light board` : say`To the dark board`;
  return (
    <button
      type="button"
      className="button lamp-button"
      aria-label={words}
      title={words}
      onClick={() => chooseBoard(dark ? "light" : "dark")}
    >
      <svg viewBox="0 0 20 20" width="20" height="20" aria-hidden="true">
        <g fill="none" stroke="currentColor" strokeWidth="1.5" strokeLinejoin="round">
          <path d="M4 17h7M7.5 17V9.5L13 4" />
          <path d="M10.6 2.2l6 6-2.6 1.4-4.6-4.6z" fill={dark ? "none" : "currentColor"} />
        </g>
      </svg>
    </button>
  );
}
