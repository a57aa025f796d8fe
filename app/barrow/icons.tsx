import type { ReactNode } from "react";

/** Small drawings of what the barrow holds, in the plan's own hatches: `soil`, `ground` and `wall` style them. */
export const ICONS: Readonly<Record<string, ReactNode>> = {
  bed: <Bed outline="M4 6h28v16H4z" />,
  "bed-l": <Bed outline="M4 4h28v9H14v11H4z" />,
  "bed-u": <Bed outline="M4 4h28v20h-8V13H12v11H4z" />,
  "bed-round": <Bed outline="M18 4a10 10 0 1 1 0 20a10 10 0 1 1 0-20z" />,
  "bed-oval": <Bed outline="M18 6a14 8 0 1 1 0 16a14 8 0 1 1 0-16z" />,
  "bed-keyhole": <Bed outline="M15.5 24.7a11 11 0 1 1 5 0v-6.5a4 4 0 1 0-5 0z" />,
  "bed-free": <Bed outline="M5 6l19-2l8 10l-7 10H4z" />,
  crop: (
    <>
      <path className="icon-soil" d="M4 5h28v18H4z" />
      <path className="icon-rows" d="M7 10h22M7 18h22" />
      <path className="icon-rows" d="M10 8v4M16 8v4M22 8v4M28 8v4M10 16v4M16 16v4M22 16v4M28 16v4" />
    </>
  ),
  path: (
    <>
      <path className="icon-way" d="M4 22c8 0 6-8 14-8s6-8 14-8" />
      <path d="M4 18.5c5.5 0 4.5-8 13-8s7-8 15-8M4 25.5c10.5 0 7.5-8 15-8s5-8 13-8" />
    </>
  ),
  ground: <Ground outline="M4 5h28v18H4z" />,
  "ground-free": <Ground outline="M6 8l10-4l16 5l-3 14l-20 1z" />,
  house: <Building outline="M3 5h30v18H3z" />,
  shed: <Building outline="M8 7h20v14H8z" />,
  wall: <path className="icon-solid" d="M3 11h30v6H3z" />,
  fence: (
    <>
      <path d="M4 14h28" />
      <path className="icon-solid" d="M4 11.5h5v5H4zM15.5 11.5h5v5h-5zM27 11.5h5v5h-5z" />
    </>
  ),
  tree: (
    <>
      <circle className="icon-leaf" cx="18" cy="14" r="11" strokeDasharray="5 2 1 2" />
      <circle className="icon-trunk" cx="18" cy="14" r="2.2" />
    </>
  ),
  "keep-clear": (
    <>
      <path d="M5 5h26v18H5z" strokeDasharray="4 3" />
      <path d="M5 5l26 18M31 5L5 23" strokeWidth="1" />
    </>
  ),
  gate: (
    <>
      <path d="M2 20h5M29 20h5" strokeWidth="2.5" />
      <path d="M7 20L22 6" />
      <path d="M22 6a20 20 0 0 1 7 14" strokeDasharray="3 2" strokeWidth="1" />
    </>
  ),
  door: (
    <>
      <path d="M2 6h6M28 6h6" strokeWidth="2.5" />
      <path d="M8 6v18" />
      <path d="M8 24a20 18 0 0 0 20-18" strokeDasharray="3 2" strokeWidth="1" />
    </>
  ),
  tap: (
    <>
      <circle className="icon-water" cx="18" cy="16" r="6" />
      <path className="icon-water" d="M18 10V4M13 4h10" />
    </>
  ),
  yard: (
    <>
      <path d="M4 4h28v14l-9 6H4z" strokeWidth="1.75" />
      <path
        className="icon-solid"
        d="M2.5 2.5h3v3h-3zM30.5 2.5h3v3h-3zM30.5 16.5h3v3h-3zM21.5 22.5h3v3h-3zM2.5 22.5h3v3h-3z"
      />
    </>
  ),
};

function Bed({ outline }: { readonly outline: string }) {
  return (
    <>
      <path className="icon-soil" d={outline} />
      <path className="icon-dots" d="M9 10h.01M14 8h.01M12 18h.01M20 9h.01M26 11h.01M8 15h.01M18 6.5h.01" />
    </>
  );
}

function Ground({ outline }: { readonly outline: string }) {
  return (
    <>
      <path className="icon-ground" d={outline} strokeWidth="1" />
      <path className="icon-stones" d="M10 10h2M20 9h2M15 15h2M24 16h2M11 19h2M20 20h2" />
    </>
  );
}

function Building({ outline }: { readonly outline: string }) {
  return (
    <>
      <path className="icon-building" d={outline} strokeWidth="2" />
      <path className="icon-hatch" d="M10 21l12-14M14 21l11-13M18 21l9-11M10 16l7-8" />
    </>
  );
}
