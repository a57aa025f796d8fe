/**
 * How crops use water, a row of the published tables a line:
 *
 * crop that leads the row | name in the table | Kc ini | Kc mid | Kc end | height m | p | Kc mid on supports | days of the stages
 *
 * Kc, height and the note on supports: FAO-56 Table 12. p, the share of the soil's water that is taken with ease where the
 * crop gives off 5 mm a day: FAO-56 Table 22. Days of the four stages (initial, development, mid, late): FAO-56 Table 11,
 * from memory, but for garlic, turnip, mint, strawberry, parsnip, chard and okra, which have no row there and are
 * guessed; only their proportion is used. A range is given as its ends.
 */
export const CROP_WATER_ROWS = `
broccoli | Broccoli | 0.7 | 1.05 | 0.95 | 0.3 | 0.45 | - | 35 45 40 15
cabbage | Cabbage | 0.7 | 1.05 | 0.95 | 0.4 | 0.45 | - | 40 60 50 15
carrot | Carrots | 0.7 | 1.05 | 0.95 | 0.3 | 0.35 | - | 30 40 60 20
cauliflower | Cauliflower | 0.7 | 1.05 | 0.95 | 0.4 | 0.45 | - | 35 50 40 15
celery | Celery | 0.7 | 1.05 | 1 | 0.6 | 0.2 | - | 25 40 45 15
garlic | Garlic | 0.7 | 1 | 0.7 | 0.3 | 0.3 | - | 15 25 70 40
lettuce-leaf | Lettuce | 0.7 | 1 | 0.95 | 0.3 | 0.3 | - | 20 30 15 10
onion-bulb | Onions, dry | 0.7 | 1.05 | 0.75 | 0.4 | 0.3 | - | 15 25 70 40
onion-green | Onions, green | 0.7 | 1 | 1 | 0.3 | 0.3 | - | 25 30 10 5
spinach | Spinach | 0.7 | 1 | 0.95 | 0.3 | 0.2 | - | 20 20 25 5
radish | Radish | 0.7 | 0.9 | 0.85 | 0.3 | 0.3 | - | 5 10 15 5
eggplant | Eggplant | 0.6 | 1.05 | 0.9 | 0.8 | 0.45 | - | 30 45 40 25
pepper | Sweet pepper (bell) | 0.6 | 1.05 | 0.9 | 0.7 | 0.3 | 1.15 | 30 35 40 20
tomato | Tomato | 0.6 | 1.15 | 0.7..0.9 | 0.6 | 0.4 | 1.2 | 30 40 45 30
cantaloupe | Cantaloupe | 0.5 | 0.85 | 0.6 | 0.3 | 0.45 | - | 30 45 35 10
cucumber | Cucumber, fresh market | 0.6 | 1 | 0.75 | 0.3 | 0.5 | 1.15 | 20 30 40 15
pumpkin | Pumpkin, winter squash | 0.5 | 1 | 0.8 | 0.4 | 0.35 | - | 20 30 30 20
squash-summer | Squash, zucchini | 0.5 | 0.95 | 0.75 | 0.3 | 0.5 | - | 25 35 25 15
watermelon | Watermelon | 0.4 | 1 | 0.75 | 0.4 | 0.4 | - | 20 30 30 30
beet | Beets, table | 0.5 | 1.05 | 0.95 | 0.4 | 0.5 | - | 25 30 25 10
potato | Potato | 0.5 | 1.15 | 0.75 | 0.6 | 0.35 | - | 25 30 45 30
turnip | Turnip, rutabaga | 0.5 | 1.1 | 0.95 | 0.6 | 0.5 | - | 25 30 25 10
bean-bush | Beans, green | 0.5 | 1.05 | 0.9 | 0.4 | 0.45 | 1.15 | 20 30 30 10
pea | Peas, fresh | 0.5 | 1.15 | 1.1 | 0.5 | 0.35 | 1.2 | 20 30 35 15
asparagus | Asparagus | 0.5 | 0.95 | 0.3 | 0.2..0.8 | 0.45 | - | 90 30 200 45
mint | Mint | 0.6 | 1.15 | 1.1 | 0.6..0.8 | 0.4 | - | 30 30 120 30
strawberry | Strawberries | 0.4 | 0.85 | 0.75 | 0.2 | 0.2 | - | 30 30 60 30
corn-sweet | Sweet corn (fresh) | 0.3 | 1.15 | 1.05 | 1.5 | 0.5 | - | 20 25 25 10
sweet-potato | Sweet potato | 0.5 | 1.15 | 0.65 | 0.4 | 0.65 | - | 20 30 60 40
parsnip | Parsnip | 0.5 | 1.05 | 0.95 | 0.4 | 0.4 | - | 30 40 60 20
chard | group: small vegetables | 0.7 | 1.05 | 0.95 | 0.3 | 0.3 | - | 20 30 25 10
okra | group: Solanaceae | 0.6 | 1.15 | 0.8 | 0.8 | 0.45 | - | 30 45 40 25
`;
