import { useState } from "react";
import { calendarText, type Garden, say, type Task } from "../../../src/index.ts";
import { offerFile } from "../../keeping/file.ts";
import { useKeeping } from "../../keeping/use-keeping.ts";
import { fileNameOf } from "../../sharing/file-name.ts";
import { useEditor } from "../../store/use-editor.ts";
import { ChoiceField } from "../fields/ChoiceField.tsx";
import { NumberField } from "../fields/NumberField.tsx";

interface Props {
  readonly garden: Garden;
  readonly tasks: readonly Task[];
  readonly thisYear: number;
}

/** The year taken along: as a page to print, and as a file for the calendar one has. */
export function TakeAlong({ garden, tasks, thisYear }: Props) {
  const { firstYear } = garden.upkeep;
  const [year, setYear] = useState(Math.max(thisYear, firstYear ?? thisYear));
  const [span, setSpan] = useState<"one" | "all">("one");
  return (
    <>
      <NumberField
        label={say`Year`}
        whole
        least={1900}
        most={2200}
        decimals={0}
        value={year}
        onCommit={setYear}
      />
      <ChoiceField
        label={say`The calendar holds`}
        value={span}
        choices={[
          { value: "one", label: say`This year alone` },
          { value: "all", label: say`Every year from then on` },
        ]}
        onCommit={setSpan}
      />
      <div className="wide ways-out">
        <button type="button" className="button main" onClick={() => void openYearPage()}>
          {say`Print the year’s page`}
        </button>
        <button
          type="button"
          className="button"
          onClick={() => saveCalendar(garden, tasks, { year, repeat: span === "all" })}
        >
          {say`Save calendar file`}
        </button>
      </div>
      <p className="field-note wide">
        {say`The calendar file (.ics) opens in any calendar. A file saved again renews what the one before put there.`}
      </p>
    </>
  );
}

async function openYearPage(): Promise<void> {
  try {
    const { openYearPage: open } = await import("../../sheet/open-year-page.tsx");
    open();
  } catch {
    useEditor.getState().say(say`The year’s page could not be loaded: check the connection and try again.`);
  }
}

function saveCalendar(
  garden: Garden,
  tasks: readonly Task[],
  { year, repeat }: { readonly year: number; readonly repeat: boolean },
): void {
  const { firstYear } = garden.upkeep;
  if (!repeat && firstYear !== null && year < firstYear) {
    useEditor.getState().say(say`The beds are built in ${firstYear}: nothing comes up in ${year}.`);
    return;
  }
  const text = calendarText(tasks, {
    ...{ year, firstYear, repeat },
    name: garden.name,
    key: useKeeping.getState().gardenId ?? garden.name,
    stamp: new Date(),
  });
  offerFile(fileNameOf(say`${garden.name} year round ${year}`, "ics"), text, "text/calendar;charset=utf-8");
}
