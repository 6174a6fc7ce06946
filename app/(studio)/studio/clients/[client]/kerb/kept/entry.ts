import { z } from 'zod'

/** What was written down in one go, as this browser keeps it until the studio has it. */
export const entrySchema = z.object({
	/** The key under which it is taken once. */
	id: z.string(),
	/** Who wrote it down: nobody else is shown it. */
	person: z.string(),
	client: z.string(),
	clientName: z.string(),
	/** What it is called in a list. */
	title: z.string(),
	state: z.enum(['being written', 'waiting', 'refused']),
	fields: z.record(z.string(), z.string()),
	errors: z.record(z.string(), z.string()),
	at: z.number(),
})
export type Entry = Readonly<z.infer<typeof entrySchema>>
export type Fields = Entry['fields']
