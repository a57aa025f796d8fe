import { say } from "../../src/index.ts";
import { useMoment } from "./moment.ts";
import { pauseDay, playDay } from "./play-day.ts";

/** Plays the day from where it is, and pauses it. */
export function PlayButton({ bare = false }: { readonly bare?: boolean }) {
  const playing = useMoment((s) => s.playing);
  const words = playing ? say`Pause` : say`Play the day`;
  return (
    <button
      type="button"
      className="button play"
      {...(bare ? { "aria-label": words, title: words } : {})}
      onClick={playing ? pauseDay : playDay}
    >
      <svg viewBox="0 0 12 12" width="12" height="12" aria-hidden="true">
        <path d={playing ? "M2 1H5V11H2ZM7 1H10V11H7Z" : "M2 1L11 6L2 11Z"} fill="currentColor" />
      </svg>
      {bare ? null : words}
    </button>
  );
}
