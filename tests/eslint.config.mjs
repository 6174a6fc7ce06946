import tseslint from 'typescript-eslint'

/** Biome does the rest; these two rules need types, and see an un-awaited assertion of a browser test. */
export default tseslint.config(
	// What builds leave behind, that of the bench as well.
	{ ignores: ['**/.next/**'] },
	{
		files: ['**/*.ts', '**/*.tsx'],
		ignores: ['.next/**', 'node_modules/**', 'tests/bench/bare/**'],
		extends: [tseslint.configs.base],
		languageOptions: { parserOptions: { project: './tsconfig.json', tsconfigRootDir: `${import.meta.dirname}/..` } },
		linterOptions: { reportUnusedDisableDirectives: true },
		rules: {
			'@typescript-eslint/no-floating-promises': 'error',
			'@typescript-eslint/no-misused-promises': 'error',
			'@typescript-eslint/await-thenable': 'error',
			'@typescript-eslint/consistent-type-assertions': ['error', { assertionStyle: 'as' }],
			'no-restricted-syntax': [
				'error',
				{
					selector: "JSXAttribute[name.name='style']",
					message: 'The policy forbids style attributes; mail alone has them.',
				},
			],
		},
	},
	{ files: ['app/documents/**'], rules: { 'no-restricted-syntax': 'off' } },
)
