import type Konva from "konva";
import { useRef } from "react";
import { Stage } from "react-konva/lib/ReactKonvaCore";
import { plainText, say } from "../../src/index.ts";
import { useEditor } from "../store/use-editor.ts";
import { useDroppedPicture } from "../underlay/use-dropped-picture.ts";
import { GroundLayer } from "./GroundLayer.tsx";
import { HandsLayer } from "./hands/HandsLayer.tsx";
import { Loupe } from "./hands/Loupe.tsx";
import { NudgePad } from "./hands/NudgePad.tsx";
import { useHands } from "./hands/use-hands.ts";
import { LiveLayer } from "./LiveLayer.tsx";
import { NorthArrow } from "./NorthArrow.tsx";
import { PlanList } from "./PlanList.tsx";
import { usePlanSize } from "./plan-size.ts";
import { Rulers } from "./rulers/Rulers.tsx";
import { ScaleBar } from "./ScaleBar.tsx";
import { MomentBar } from "./shadows/MomentBar.tsx";
import { useMeasuredSize } from "./use-measured-size.ts";
import { useNavigation } from "./use-navigation.ts";
import { useRedraw } from "./use-redraw.ts";
import "./plan.css";

/** An application takes focus and keys: arrows move what is selected, space carries the paper. */
const workable = () => ({ "aria-roledescription": say`plan`, tabIndex: 0 });

/** The scaled drawing of the garden, filling the element it stands in. */
export function Plan() {
  const element = useRef<HTMLDivElement>(null);
  const stage = useRef<Konva.Stage>(null);
  const width = usePlanSize((size) => size.width);
  const height = usePlanSize((size) => size.height);
  const name = useEditor((state) => plainText(state.garden.name));
  const { handlers } = useHands(element);
  useMeasuredSize(element);
  useNavigation(element);
  useDroppedPicture(element);
  useRedraw(stage);

  return (
    <div className="plan">
      <div
        ref={element}
        className="plan-board"
        role="application"
        {...workable()}
        aria-label={name ? say`Plan of ${name}` : say`Plan of the garden`}
        {...handlers}
      >
        {width > 0 && height > 0 && (
          <Stage ref={stage} width={width} height={height} listening={false} className="plan-stage">
            <GroundLayer />
            <LiveLayer />
            <HandsLayer />
          </Stage>
        )}
        <Rulers />
        <ScaleBar />
      </div>
      <MomentBar />
      <NorthArrow />
      <NudgePad />
      <Loupe board={element} />
      <PlanList />
    </div>
  );
}
