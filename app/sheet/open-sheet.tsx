import { layOver } from "./lay-over.tsx";
import { SheetDesk } from "./SheetDesk.tsx";

/** Lays the build sheet over the page. */
export const openSheet = (): void => layOver((close) => <SheetDesk onClose={close} />);
