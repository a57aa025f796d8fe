import { useMemo, useState } from "react";
import { frostsOf, type Garden, monthDayOf, say, sayCount, yearDay, yearRound } from "../../../src/index.ts";
import { Filled, slot } from "../../language/Filled.tsx";
import { useEditor } from "../../store/use-editor.ts";
import { CardSection } from "../card/CardSection.tsx";
import { writeMonthDay } from "../site/DateField.tsx";
import { ToSite } from "../ToSite.tsx";
import { WaterSection } from "../water/WaterSection.tsx";
import { setWaterMonth, useWaterMonth } from "../water/water-month.ts";
import { MonthTasks } from "./MonthTasks.tsx";
import { TakeAlong } from "./TakeAlong.tsx";
import { UpkeepFields } from "./UpkeepFields.tsx";
import { YearStrip } from "./YearStrip.tsx";
import { YearsAhead } from "./YearsAhead.tsx";
import "./year.css";

/** What the garden asks through the year: the year as a strip, the month looked at, what is chosen, and the years ahead. */
export function YearRoundLeaf() {
  // As committed: nobody plans the year while a bed is on the move.
  const garden = useEditor((s) => s.garden);
  const tasks = useMemo(() => yearRound(garden), [garden]);
  const [now] = useState(() => new Date());
  const month = useWaterMonth((s) => s.month);
  if (tasks.length === 0) {
    return (
      <>
        <p className="leaf-text quiet">{say`No bed yet: drag one out of the barrow, and its year stands here.`}</p>
        <DaysNote garden={garden} />
      </>
    );
  }
  return (
    <div className="year">
      <YearStrip tasks={tasks} month={month} today={dayOf(now)} onMonth={setWaterMonth} />
      <DaysNote garden={garden} />
      <MonthTasks garden={garden} tasks={tasks} month={month} onMonth={setWaterMonth} />
      <CardSection title={say`Take it along`} gist={say`page, calendar file`} open>
        <TakeAlong garden={garden} tasks={tasks} thisYear={now.getFullYear()} />
      </CardSection>
      <WaterSection />
      <CardSection title={say`Choices`} gist={say`top-up, cover crop, first year`}>
        <UpkeepFields garden={garden} />
      </CardSection>
      <CardSection
        title={say`The years ahead`}
        gist={sayCount(garden.prices.horizon, {
          one: "what {{count}} year costs",
          other: "what {{count}} years cost",
        })}
        costly
      >
        <YearsAhead garden={garden} />
      </CardSection>
    </div>
  );
}

/** Today as a day of a year of 365; 29 February as the 28th. */
function dayOf(date: Date): number {
  const [month, day] = [date.getMonth() + 1, date.getDate()].map((part) => String(part).padStart(2, "0"));
  return yearDay(`${month}-${day}`);
}

/** What the days hang on. */
function DaysNote({ garden: { site } }: { readonly garden: Garden }) {
  const { last, first, by } = useMemo(() => frostsOf(site), [site]);
  const [spring, autumn] = [writeMonthDay(monthDayOf(last)), writeMonthDay(monthDayOf(first))];
  const typed = () =>
    say`Days by a last frost on ${spring} and a first on ${autumn}; change them ${slot(0)}.`;
  const usual = () =>
    site.winter === "freezing"
      ? say`Frosts are not all typed: days by those usual for a freezing winter, ${spring} and ${autumn}. Type your own ${slot(0)}.`
      : say`Frosts are not all typed: days by those usual for a mild winter, ${spring} and ${autumn}. Type your own ${slot(0)}.`;
  return (
    <p className="year-note">
      <Filled text={by === "frosts" ? typed() : usual()} put={[<ToSite key="site" />]} />
    </p>
  );
}
