import { createElement, Fragment, type ReactNode } from "react";

const FIRST = 0xe000;

/** Stands in a text where the page puts something of its own, a link or a mark: say`Give ${slot(0)} its outline.` */
export const slot = (number: number): string => String.fromCharCode(FIRST + number);

interface Props {
  /** With slots, in whatever order the language wants them. */
  readonly text: string;
  /** What goes into slot 0, 1, … */
  readonly put: readonly ReactNode[];
}

/** A text with parts of the page in its slots. */
export function Filled({ text, put }: Props) {
  const parts = text.split(/([\uE000-\uE009])/).map((part, i) => {
    const number = part.charCodeAt(0) - FIRST;
    return i % 2 === 1 && number < put.length ? put[number] : part;
  });
  return createElement(Fragment, null, ...parts);
}
