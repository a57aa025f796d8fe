import { type Garden, language, type PlanPicture, planPicture } from "../../src/index.ts";
import { useFindings } from "../live/findings.ts";

/** The plan of a garden as a picture, with what the page has found out about it already. */
export function pictureOf(garden: Garden): PlanPicture {
  const { of, access, takeoff, snags } = useFindings.getState();
  const known = of === garden && access && takeoff ? { known: { access, takeoff, snags } } : {};
  const date = new Intl.DateTimeFormat(language(), { dateStyle: "long" }).format(new Date());
  return planPicture(garden, { date, ...known });
}
