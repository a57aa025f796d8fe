import { say } from "../../../src/index.ts";
import { TypedField } from "./TypedField.tsx";

interface Props {
  readonly label: string;
  readonly value: string;
  readonly onCommit: (text: string) => void;
  readonly bare?: boolean;
  readonly id?: string;
}

const LONGEST = 80;

function readText(text: string): string {
  if (text.length > LONGEST) throw new RangeError(say`At most ${LONGEST} letters.`);
  return text;
}

/** A name or a place. */
export const TextField = (props: Props) => <TypedField write={(text) => text} read={readText} {...props} />;
