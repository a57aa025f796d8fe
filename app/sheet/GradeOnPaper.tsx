import type { Grade, Point } from "../../src/index.ts";

/** The grades' shapes in black and white, drawn to `size` mm about a place. */
export function GradeOnPaper(props: { readonly grade: Grade; readonly at: Point; readonly size: number }) {
  const [x, y] = props.at;
  const scale = props.size / 20;
  return <g transform={`translate(${x} ${y}) scale(${scale})`}>{shapeOf(props.grade)}</g>;
}

function shapeOf(grade: Grade) {
  switch (grade) {
    case "must":
      return (
        <>
          <path d="M-3.9-9.3h7.8l5.4 5.4v7.8l-5.4 5.4h-7.8l-5.4-5.4v-7.8z" fill="#000" stroke="#fff" />
          <path d="M-3.4-3.4l6.8 6.8m0-6.8l-6.8 6.8" stroke="#fff" strokeWidth="2.2" fill="none" />
        </>
      );
    case "should":
      return (
        <>
          <path d="M0-8.5l9 16h-18z" fill="#fff" stroke="#000" strokeWidth="1.7" strokeLinejoin="round" />
          <path d="M0-3.4v5.8m0 1.5v1.9" stroke="#000" strokeWidth="1.9" fill="none" />
        </>
      );
    case "note":
      return (
        <>
          <circle r="8.3" fill="#fff" stroke="#000" strokeWidth="1.7" />
          <path d="M0-4.8v1.9m0 1.7v6" stroke="#000" strokeWidth="1.9" fill="none" />
        </>
      );
    default: {
      const never: never = grade;
      throw new RangeError(`unknown grade ${String(never)}`);
    }
  }
}
