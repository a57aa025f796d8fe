import type { ReactNode } from "react";
import { formatRatio, parseRatio } from "../../../src/index.ts";
import { TypedField } from "./TypedField.tsx";

interface Props {
  readonly label: string;
  /** Rise over run. */
  readonly value: number;
  readonly onCommit: (ratio: number) => void;
  readonly note?: ReactNode;
  readonly bare?: boolean;
  readonly id?: string;
}

/** A slope: 1:20, 5 %, level. */
export const RatioField = (props: Props) => <TypedField write={formatRatio} read={parseRatio} {...props} />;
