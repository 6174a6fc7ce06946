export const root: string
export function run(
	command: string,
	args: readonly string[],
	options?: { env?: Record<string, string>; quiet?: boolean },
): number
export function installPackages(): void
export function actionKey(): string
export const startArguments: readonly string[]
export function build(): void
export function findBrowser(): string | undefined
export const demoMark: string
export function mustBeNoStudio(folder: string): void
export function removeDemo(folder: string): void
export function stop(message: string): never
