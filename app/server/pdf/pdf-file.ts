import 'server-only'

/** A file for one reader alone, named for their folder; as the page says it (RFC 6266), kept by no cache between. */
export const pdfFile = (bytes: Uint8Array<ArrayBuffer>, name: string): Response =>
	new Response(bytes, {
		headers: {
			'content-type': 'application/pdf',
			'content-length': String(bytes.length),
			'content-disposition': `inline; filename="${name}.pdf"`,
			'cache-control': 'private, no-store',
			'content-security-policy': "default-src 'none'",
			'cross-origin-resource-policy': 'same-origin',
			'x-content-type-options': 'nosniff',
		},
	})
