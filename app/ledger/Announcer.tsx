import { useEffect, useState } from "react";
import { useFindings } from "../live/findings.ts";
import { leftWords } from "../plan/hands/announce.ts";
import { useEditor } from "../store/use-editor.ts";
import { countSnags, lesser, toFix } from "./counts.ts";

/** Long enough that a drag is told of once, at its end. */
const QUIET_MS = 700;

/** The page's one voice for screen readers: what was done, then what that did to the snags, once things are quiet. */
export function Announcer() {
  const message = useEditor((s) => s.message);
  const of = useFindings((s) => s.of);
  const snags = useFindings((s) => s.snags);
  const counts = countSnags(snags);
  const count = of ? `${toFix(counts)}; ${lesser(counts)}.` : "";
  const left = leftWords(snags);
  const [said, setSaid] = useState("");
  // What the page opens with is no news.
  const [told, setTold] = useState({ message: message.count, count });

  useEffect(() => {
    const news = [
      message.count === told.message ? "" : message.text,
      count === told.count || told.count === "" || message.text.endsWith(left) ? "" : count,
    ].filter(Boolean);
    const timer = setTimeout(() => {
      if (news.length > 0) setSaid(news.join(" "));
      if (message.count !== told.message || count !== told.count) setTold({ message: message.count, count });
    }, QUIET_MS);
    return () => clearTimeout(timer);
  }, [message, count, told, left]);

  return (
    <p className="unseen" role="status" aria-live="polite">
      {said}
    </p>
  );
}
