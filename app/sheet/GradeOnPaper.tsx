import { GRADE_SIGNS, type Grade, type Point, SIGN_PARTS } from "../../src/index.ts";

/** The grades' shapes in black and white, drawn to `size` mm about a place. */
export function GradeOnPaper(props: { readonly grade: Grade; readonly at: Point; readonly size: number }) {
  const [x, y] = props.at;
  return (
    <g transform={`translate(${x} ${y}) scale(${props.size / SIGN_PARTS})`}>
      {GRADE_SIGNS[props.grade].map(({ path, fill, colour, width }) => (
        <path key={path} d={path} fill={fill} stroke={colour} strokeWidth={width} strokeLinejoin="round" />
      ))}
    </g>
  );
}
