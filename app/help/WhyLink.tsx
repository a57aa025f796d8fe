import { say } from "../../src/index.ts";
import { openRules, type Wanted } from "./rules-wanted.ts";

interface Props {
  readonly wanted: Wanted;
  /** What it is the why of, for those who meet the link out of its place. */
  readonly of: string;
}

/** Leads from a snag or a limit to what the page of rules says of it. */
export const WhyLink = ({ wanted, of }: Props) => (
  <button type="button" className="link" onClick={() => openRules(wanted)}>
    {say`Why`}
    <span className="unseen">: {of}</span>
  </button>
);
