import { Component, type ReactNode } from "react";
import { say } from "../src/index.ts";

interface Props {
  /** What has failed, for the sentence: "The plan". */
  readonly what: string;
  /** Another value tries again: the leaf turned to, the thing selected. */
  readonly about?: string;
  readonly children: ReactNode;
}

interface State {
  readonly problem: string | null;
  readonly about: string | undefined;
}

/**
 * Keeps a fault in one part of the page from taking the others with it: the garden, undo and saving stay at hand.
 * React has no other way to catch a fault in drawing than a class.
 */
export class Fallback extends Component<Props, State> {
  override state: State = { problem: null, about: this.props.about };

  static getDerivedStateFromError(error: unknown): Partial<State> {
    return { problem: error instanceof Error ? error.message : String(error) };
  }

  static getDerivedStateFromProps({ about }: Props, state: State): Partial<State> | null {
    return about === state.about ? null : { problem: null, about };
  }

  override render(): ReactNode {
    const { problem } = this.state;
    if (problem === null) return this.props.children;
    return (
      <div className="fallback" role="alert">
        <p>{say`${this.props.what} could not be shown: ${problem}`}</p>
        <p>{say`Nothing of the garden is lost. It can be saved to a file under Gardens.`}</p>
        <button
          type="button"
          className="button"
          onClick={() => this.setState({ problem: null })}
        >{say`Try again`}</button>
      </div>
    );
  }
}
