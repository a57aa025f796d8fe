import type { EditionId } from "../garden/editions.ts";
import { published, type Source } from "../garden/source.ts";
import { INCH } from "../units/length.ts";

/** From where a wheelchair comes up to a gate: straight on, along the wall past the hinges, along it past the latch. */
export type Approach = "front" | "hinge side" | "latch side";
/** What whoever comes does with the leaf. */
export type Opens = "pull" | "push" | "slide";

/** Ground to be level and clear before a gate or door, mm. */
export interface GateClearance {
  readonly approach: Approach;
  /** Square to the opening, from the face of what it is in. */
  readonly depth: number;
  /** Along the wall, past the opening's own ends. */
  readonly beyondLatch: number;
  readonly beyondHinge: number;
}

/**
 * Table 404.2.4.1 for leaves that swing, without a closer, as garden gates are; sliding and folding by Table 404.2.4.2.
 * Depth, beyond the latch, beyond the hinges (for what slides: the stop, the pocket); inches, and millimetres as printed.
 * The hinge side of a leaf that is pulled may be had in two ways.
 */
const ROWS: readonly {
  readonly opens: Opens;
  readonly approach: Approach;
  readonly inches: readonly [number, number, number];
  readonly mm: readonly [number, number, number];
}[] = [
  { opens: "pull", approach: "front", inches: [60, 18, 0], mm: [1525, 455, 0] },
  { opens: "pull", approach: "hinge side", inches: [60, 36, 0], mm: [1525, 915, 0] },
  { opens: "pull", approach: "hinge side", inches: [54, 42, 0], mm: [1370, 1065, 0] },
  { opens: "pull", approach: "latch side", inches: [48, 24, 0], mm: [1220, 610, 0] },
  { opens: "push", approach: "front", inches: [48, 0, 0], mm: [1220, 0, 0] },
  { opens: "push", approach: "hinge side", inches: [42, 0, 22], mm: [1065, 0, 560] },
  { opens: "push", approach: "latch side", inches: [42, 24, 0], mm: [1065, 610, 0] },
  // From memory: Table 404.2.4.2.
  { opens: "slide", approach: "front", inches: [48, 0, 0], mm: [1220, 0, 0] },
  { opens: "slide", approach: "hinge side", inches: [42, 0, 22], mm: [1065, 0, 560] },
  { opens: "slide", approach: "latch side", inches: [42, 24, 0], mm: [1065, 610, 0] },
];

export const GATE_SOURCE: Source = published(
  "2010 ADA Standards for Accessible Design, Table 404.2.4.1, without a closer; sliding by Table 404.2.4.2, from memory",
);

/** The ground that each approach asks for, in the figures of an edition. */
export const gateClearances = (opens: Opens, edition: EditionId): GateClearance[] =>
  ROWS.filter((row) => row.opens === opens).map(({ approach, inches, mm }) => {
    const [depth, beyondLatch, beyondHinge] =
      edition === "ada-2010-mm" ? mm : (inches.map((size) => size * INCH) as [number, number, number]);
    return { approach, depth, beyondLatch, beyondHinge };
  });
