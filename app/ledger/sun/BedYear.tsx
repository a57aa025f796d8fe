import { useCallback } from "react";
import { type BedMonth, type Garden, type ItemId, say, shadeSentences } from "../../../src/index.ts";
import type { SunQuestions } from "../../live/sun-questions.ts";
import { useEditor } from "../../store/use-editor.ts";
import { MonthBars } from "./MonthBars.tsx";
import { useSunAnswer } from "./use-sun-answer.ts";

interface Props {
  readonly id: ItemId;
  /** Nothing is worked out for what nobody looks at. */
  readonly wanted: boolean;
  /** All months, not only those of the season. */
  readonly whole: boolean;
}

/** How the sun comes to a bed through the season: a bar of the day for each month, and what shades it until when. */
export function BedYear({ id, wanted, whole }: Props) {
  const garden = useEditor((s) => s.garden);
  const ask = useCallback((questions: SunQuestions, of: Garden) => questions.bedMonths(of, id), [id]);
  const { answer: months, fresh, problem } = useSunAnswer<readonly BedMonth[]>(wanted, ask);
  if (problem)
    return <p className="bed-shade quiet">{say`Its months could not be worked out: ${problem}.`}</p>;
  if (!months) return <div className="bed-year-coming" />;
  if (months.length === 0) return null;
  return (
    <div className="bed-year" data-fresh={fresh}>
      <MonthBars months={months} whole={whole} />
      {shadeSentences(garden, months).map((sentence) => (
        <p key={sentence} className="bed-shade">
          {sentence}
        </p>
      ))}
    </div>
  );
}
