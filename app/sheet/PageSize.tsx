import { PAPERS, type PaperId } from "../../src/index.ts";

/** Has the browser print on this paper, to its very edges: the page brings its own margins. */
export const PageSize = ({ paper }: { readonly paper: PaperId }) => {
  const { width, height } = PAPERS[paper];
  const size = [width, height].map((mm) => `${mm}mm`).join(" ");
  return <style>{`@page{size:${size};margin:0}`}</style>;
};
