export const root: string;
export function run(command: string, args: readonly string[], env?: NodeJS.ProcessEnv): boolean;
export function fail(message: string): never;
export function setUp(options: { readonly browser: boolean }): void;
export function findChromium(): string | null;
