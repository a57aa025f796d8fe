import type { JSX } from "react";
import { type Grade, told, word } from "../../src/index.ts";

const GRADE_WORDS: Readonly<Record<Grade, string>> = {
  must: word("Must fix"),
  should: word("Should fix"),
  note: word("Worth knowing"),
};

export const gradeWords = (grade: Grade): string => told(GRADE_WORDS[grade]);

interface Props {
  readonly grade: Grade;
  readonly size?: number;
}

/**
 * A grade as a shape that survives without colour: an eight-sided stop, a triangle, a circle. The shape says nothing
 * to a screen reader: put the word beside it (`gradeWords`).
 */
export function GradeMark({ grade, size = 20 }: Props) {
  return (
    <svg className="grade-mark" width={size} height={size} viewBox="-10 -10 20 20" aria-hidden="true">
      {DRAWN[grade]}
    </svg>
  );
}

const DRAWN: Readonly<Record<Grade, JSX.Element>> = {
  must: (
    <>
      <path d="M-3.9-9.3h7.8l5.4 5.4v7.8l-5.4 5.4h-7.8l-5.4-5.4v-7.8z" fill="var(--accent)" />
      <path d="M-3.4-3.4l6.8 6.8m0-6.8l-6.8 6.8" stroke="var(--sheet)" strokeWidth="2.2" fill="none" />
    </>
  ),
  should: (
    <>
      <path
        d="M0-8.5l9 16h-18z"
        fill="var(--sheet)"
        stroke="var(--ink)"
        strokeWidth="1.7"
        strokeLinejoin="round"
      />
      <path d="M0-3.4v5.8m0 1.5v1.9" stroke="var(--ink)" strokeWidth="1.9" fill="none" />
    </>
  ),
  note: (
    <>
      <circle r="8.3" fill="var(--sheet)" stroke="var(--ink)" strokeWidth="1.7" />
      <path d="M0-4.8v1.9m0 1.7v6" stroke="var(--ink)" strokeWidth="1.9" fill="none" />
    </>
  ),
};
