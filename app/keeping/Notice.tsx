import type { ReactNode } from "react";
import "./notices.css";

interface Props {
  /** Said at once, over whatever is being read out; otherwise when there is a pause. */
  readonly urgent?: boolean;
  /** What can be done about it. */
  readonly doings: ReactNode;
  readonly children: ReactNode;
}

/** A line above the plan that stays for as long as it is true. */
export function Notice({ urgent = false, doings, children }: Props) {
  return (
    <div className={urgent ? "notice wrong" : "notice"}>
      <p role={urgent ? "alert" : "status"}>{children}</p>
      <div className="button-row">{doings}</div>
    </div>
  );
}
