import type { Grade } from "../rules/rule.ts";

/** A stroke of a sign, about its middle, in twentieths of its size. */
export interface SignStroke {
  readonly path: string;
  readonly fill: "#000" | "#fff" | "none";
  readonly colour: "#000" | "#fff";
  readonly width: number;
}

/** The grades' shapes in black and white: told apart on a copy, and by those who see no colours. */
export const GRADE_SIGNS: Readonly<Record<Grade, readonly SignStroke[]>> = {
  must: [
    {
      path: "M-3.9-9.3h7.8l5.4 5.4v7.8l-5.4 5.4h-7.8l-5.4-5.4v-7.8z",
      fill: "#000",
      colour: "#fff",
      width: 1,
    },
    { path: "M-3.4-3.4l6.8 6.8m0-6.8l-6.8 6.8", fill: "none", colour: "#fff", width: 2.2 },
  ],
  should: [
    { path: "M0-8.5l9 16h-18z", fill: "#fff", colour: "#000", width: 1.7 },
    { path: "M0-3.4v5.8m0 1.5v1.9", fill: "none", colour: "#000", width: 1.9 },
  ],
  note: [
    { path: "M-8.3 0a8.3 8.3 0 1 0 16.6 0a8.3 8.3 0 1 0-16.6 0z", fill: "#fff", colour: "#000", width: 1.7 },
    { path: "M0-4.8v1.9m0 1.7v6", fill: "none", colour: "#000", width: 1.9 },
  ],
};

/** What a sign's strokes are told in, of its size. */
export const SIGN_PARTS = 20;
