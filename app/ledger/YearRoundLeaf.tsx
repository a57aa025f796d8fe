import { ToSite } from "./ToSite.tsx";

/** What every raised bed asks in a year; common practice, the same whatever stands on the plan. */
export const YearRoundLeaf = () => (
  <div className="leaf-text">
    <h3>What every bed asks in a year</h3>
    <p>Top the beds up by 2 to 3 in (5 to 8 cm) once or twice a year, and keep them mulched.</p>
    <p>Sow a cover crop or cover the soil for winter.</p>
    <p>Test new compost or manure on a pot of beans before it goes on.</p>
    <p className="quiet">
      Common practice, the same for every bed. Winter and frost dates are kept <ToSite />.
    </p>
  </div>
);
