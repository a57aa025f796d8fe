import { useFindings } from "../live/findings.ts";

export function Ledger() {
  const fixes = useFindings((s) => s.snags.filter(({ grade }) => grade === "must").length);
  return (
    <aside className="ledger" aria-label="Ledger">
      <p>{fixes} to fix</p>
    </aside>
  );
}
