import { say, told, word } from "../../src/index.ts";
import { BOARDS, type BoardChoice, chooseBoard, useBoard } from "./board.ts";

const WORDS: Readonly<Record<BoardChoice, string>> = {
  device: word("As the device"),
  light: word("Light"),
  dark: word("Dark"),
};

/** Which drawing board is worked on. It stays with the device; paper is always light. */
export function BoardField() {
  const chosen = useBoard((s) => s.choice);
  return (
    <fieldset className="field wide">
      <legend>{say`Drawing board`}</legend>
      <div className="button-row">
        {BOARDS.map((choice) => (
          <button
            key={choice}
            type="button"
            className="button"
            aria-pressed={choice === chosen}
            onClick={() => chooseBoard(choice)}
          >
            {told(WORDS[choice])}
          </button>
        ))}
      </div>
      <p className="field-note">{say`Kept on this device, not in the garden. What is printed is always light.`}</p>
    </fieldset>
  );
}
