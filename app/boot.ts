/** What has to be there before the first paint: the garden on the board, its analysis, its keeping. */
export async function boot(): Promise<void> {}
