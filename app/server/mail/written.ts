/** Why somebody gets a mail, at its foot, by the door that it leads to. */
export const written = {
	client: (studio: string) =>
		`${studio} sent this because you are named as a contact. No need to reply; if you do, we read it.`,
	safety: (studio: string) =>
		`${studio} sent this to keep your door safe, whatever other mail you get. If you answer it, we read it.`,
	studio: (studio: string) => `Sent to you because you design for ${studio}.`,
}
