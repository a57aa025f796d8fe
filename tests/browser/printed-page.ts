import { getDocument, OPS, Util } from "pdfjs-dist/legacy/build/pdf.mjs";

/** One drawn path: its extent on the page in points, whatever it is made of. */
export interface Drawn {
  readonly width: number;
  readonly height: number;
  readonly stroked: boolean;
}

export interface PrintedPage {
  readonly widthPt: number;
  readonly heightPt: number;
  readonly text: string;
  readonly smallestTypePt: number;
  readonly paths: readonly Drawn[];
}

/** Reads a PDF as a person with a ruler would: pages, words, and the size of what is drawn. */
export async function printedPages(pdf: Uint8Array): Promise<PrintedPage[]> {
  const document = await getDocument({ data: new Uint8Array(pdf), useSystemFonts: false, verbosity: 0 })
    .promise;
  const pages: PrintedPage[] = [];
  for (let number = 1; number <= document.numPages; number++) {
    const page = await document.getPage(number);
    const { width, height } = page.getViewport({ scale: 1 });
    const content = await page.getTextContent();
    const words = content.items.flatMap((item) => ("str" in item && item.str.trim() !== "" ? [item] : []));
    const sizes = words.map((word) => Math.hypot(Number(word.transform[2]), Number(word.transform[3])));
    pages.push({
      widthPt: width,
      heightPt: height,
      text: words.map((word) => word.str).join(" "),
      smallestTypePt: Math.min(...sizes),
      paths: drawnPaths(await page.getOperatorList()),
    });
  }
  await document.destroy();
  return pages;
}

type Matrix = [number, number, number, number, number, number];

/** Follows the drawing operators with the matrix that is in force at each path. */
function drawnPaths({ fnArray, argsArray }: { fnArray: number[]; argsArray: unknown[][] }): Drawn[] {
  const paths: Drawn[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  const saved: Matrix[] = [];
  fnArray.forEach((fn, i) => {
    const args = argsArray[i] ?? [];
    if (fn === OPS.save) saved.push(matrix);
    else if (fn === OPS.restore) matrix = saved.pop() ?? matrix;
    else if (fn === OPS.transform) matrix = Util.transform(matrix, args) as Matrix;
    else if (fn === OPS.constructPath) paths.push(extent(args, matrix));
  });
  return paths;
}

/** A path comes as what is done with it, its steps, and the box of its points before the matrix. */
function extent(args: readonly unknown[], [a, b, c, d]: Matrix): Drawn {
  const [minX = 0, minY = 0, maxX = 0, maxY = 0] = args[2] as ArrayLike<number> & number[];
  const [w, h] = [maxX - minX, maxY - minY];
  return {
    width: Math.abs(a * w) + Math.abs(c * h),
    height: Math.abs(b * w) + Math.abs(d * h),
    stroked: args[0] === OPS.stroke || args[0] === OPS.closeStroke,
  };
}
