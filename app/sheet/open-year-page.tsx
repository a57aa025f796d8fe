import { layOver } from "./lay-over.tsx";
import { YearDesk } from "./YearDesk.tsx";

/** Lays the year's page over the planner's. */
export const openYearPage = (): void => layOver((close) => <YearDesk onClose={close} />);
