import { formatMoney, formatShare, say, type Takeoff } from "../../../src/index.ts";

/** The total, and how much of it is fill, drawn as two lengths of one bar. */
export function FillBar({ takeoff }: { readonly takeoff: Takeoff }) {
  const { total, fillShare, currency } = takeoff;
  const fill = total * fillShare;
  return (
    <figure className="fill-bar">
      <figcaption>
        <strong>{formatMoney(total, currency)}</strong>
        <span>{say`fill ${formatMoney(fill, currency, false)} (${formatShare(fillShare)}), all else ${formatMoney(total - fill, currency, false)}`}</span>
      </figcaption>
      <svg viewBox="0 0 100 6" preserveAspectRatio="none" aria-hidden="true">
        <defs>
          <pattern id="fill-bar-soil" width="1.2" height="2" patternUnits="userSpaceOnUse">
            <rect width="1.2" height="2" fill="var(--soil)" />
            <path d="M0 2L1.2 0" stroke="var(--soil-mark)" strokeWidth="0.25" />
          </pattern>
        </defs>
        <rect width="100" height="6" fill="var(--sheet)" />
        <rect width={100 * fillShare} height="6" fill="url(#fill-bar-soil)" />
      </svg>
    </figure>
  );
}
