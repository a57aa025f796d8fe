import { configure } from "@testing-library/react";

// Leaves and dialogs are fetched when they are first asked for: on a busy machine that takes longer than a second.
configure({ asyncUtilTimeout: 10_000 });
