import { type ReactNode, useEffect, useState } from "react";

interface Props {
  readonly title: string;
  /** What is inside, for when it is shut: "2x6, 2 courses". */
  readonly gist?: string;
  readonly open?: boolean;
  /** What is inside costs something to work out: it is there only while the section is open. */
  readonly costly?: boolean;
  /** Something inside is wanted: a shut section opens once, and may be shut again. */
  readonly wanted?: boolean;
  readonly children: ReactNode;
}

/** A part of a card that opens and shuts. */
export function CardSection({
  title,
  gist,
  open: first = false,
  costly = false,
  wanted = false,
  children,
}: Props) {
  const [open, setOpen] = useState(first);
  useEffect(() => {
    if (wanted) setOpen(true);
  }, [wanted]);
  return (
    <details className="card-section" open={open} onToggle={(event) => setOpen(event.currentTarget.open)}>
      <summary>
        <span>{title}</span>
        {gist ? <span className="gist">{gist}</span> : null}
      </summary>
      {costly && !open ? null : <div className="fields">{children}</div>}
    </details>
  );
}
