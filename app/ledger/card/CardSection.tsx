import type { ReactNode } from "react";

interface Props {
  readonly title: string;
  /** What is inside, for when it is shut: "2x6, 2 courses". */
  readonly gist?: string;
  readonly open?: boolean;
  readonly children: ReactNode;
}

/** A part of a card that opens and shuts. */
export const CardSection = ({ title, gist, open = false, children }: Props) => (
  <details className="card-section" open={open}>
    <summary>
      <span>{title}</span>
      {gist ? <span className="gist">{gist}</span> : null}
    </summary>
    <div className="fields">{children}</div>
  </details>
);
