-- A region's isolation register in PostgreSQL with PostGIS: loads newline-delimited GeoJSON and
-- applies Wideberth's isolation rule. See regional-register.md. From the folder of this file:
--
--   psql -d region -v ON_ERROR_STOP=1 -f regional-register.sql < register.ndjson
--   psql -d region -c "select * from isolation_pair where standing = 'conflict'"

create extension if not exists postgis;

-- Kinds of the crop base: crossing group, days between bloom windows, what carries the pollen, and
-- the distance asked for at each purity level (empty: none is known; *_is_least: the figure of a
-- laxer level, short of which is a conflict and beyond which nothing is known). same_name_m is the
-- distance of stock seed from another stand of its name, strip_m what a published 0 leaves between.
create table kind (
  id text primary key,
  name text not null,
  crossing_group text not null,
  life_cycle text not null,
  carrier text not null,
  guard_days integer not null,
  home_m double precision,
  sale_m double precision,
  sale_is_least boolean not null,
  stock_m double precision,
  stock_is_least boolean not null,
  same_name_m double precision not null,
  strip_m double precision not null
);
\copy kind from 'regional-kinds.csv' with (format csv, header)

-- How readily two unlike kinds of one group cross: freely, sometimes, rarely. "no" is left out, and
-- each way stands by itself: one kind may take the pollen of another that does not take its own.
create table kind_relation (
  seed_kind text not null references kind,
  pollen_kind text not null references kind,
  relation text not null,
  primary key (seed_kind, pollen_kind)
);
\copy kind_relation from 'regional-relations.csv' with (format csv, header)

-- What sources ask beside wild and weedy kinds, where it is more than the figure of the seed parent.
create table kind_wild (
  seed_kind text not null references kind,
  wild_kind text not null references kind,
  at_least_m double precision not null,
  primary key (seed_kind, wild_kind)
);
\copy kind_wild from 'regional-wild.csv' with (format csv, header)

create table register_line (
  line bigint generated always as identity,
  feature text not null
);
-- One line, one text: quote and delimiter are signs that JSON never holds unescaped.
\copy register_line (feature) from pstdin with (format csv, quote e'\x01', delimiter e'\x02')

create table planting (
  id text primary key,
  kind text not null references kind,
  crossing_group text not null,
  -- Plantings of one variety are no risk to each other; one without a name is a variety of its own.
  variety text not null,
  is_source boolean not null,
  -- Words no rule knows stop the load: none may pass for another.
  purpose text not null check (purpose in ('seed', 'food', 'other')),
  flowering text not null check (flowering in ('yes', 'cut', 'first-year')),
  hybrid text not null check (hybrid in ('true', 'yes', 'false', 'no')),
  level text not null check (level in ('home', 'sale', 'stock')),
  is_seed_parent boolean not null,
  sheds_pollen boolean not null,
  -- Distance this planting's seed needs; null: not known.
  required_m double precision,
  -- Typed by the grower: nothing is added to it.
  is_typed boolean not null,
  -- A laxer level's figure: the least, and what is enough is not known.
  is_least boolean not null,
  -- Beyond this no source matters; null: not known.
  reach_m double precision,
  first_bloom date,
  last_bloom date,
  cover text not null,
  carrier text not null,
  guard_days integer not null,
  ground geography(geometry, 4326) not null
);

-- A property in small letters; an empty one counts as missing.
create function pg_temp.said(feature jsonb, property text, otherwise text) returns text
language sql immutable
return coalesce(nullif(lower(trim(feature -> 'properties' ->> property)), ''), otherwise);

insert into planting
with feature as (
  select line, ltrim(feature, e'\x1e\uFEFF')::jsonb as f
  from register_line
  where trim(both e'\x1e\uFEFF \t\r' from feature) <> ''
), field as (
  select
    coalesce(f ->> 'id', 'feature-' || row_number() over (order by line)) as id,
    pg_temp.said(f, 'kind', '') as kind,
    -- Spellings that differ in case, spaces or how accents are encoded are one name; what says
    -- that nobody knows it is none.
    regexp_replace(trim(regexp_replace(
      replace(lower(normalize(coalesce(f -> 'properties' ->> 'variety', ''), nfc)), 'ß', 'ss'),
      '\s+', ' ', 'g'
    )), '^(\?+|-+|unknown|not known|unnamed|n/a)$', '') as variety,
    pg_temp.said(f, 'purpose', 'seed') as purpose,
    pg_temp.said(f, 'flowering', 'yes') as flowering,
    pg_temp.said(f, 'hybrid', 'false') as hybrid,
    pg_temp.said(f, 'cover', 'none') as cover,
    pg_temp.said(f, 'level', 'home') as level,
    pg_temp.said(f, 'isolationM', null)::double precision as isolation_m,
    pg_temp.said(f, 'bloomStart', null)::date as first_bloom,
    pg_temp.said(f, 'bloomEnd', null)::date as last_bloom,
    f -> 'geometry' ->> 'type' = 'Point'
      or pg_temp.said(f, 'wideberth', '') = 'source' as is_source,
    st_setsrid(st_geomfromgeojson(f -> 'geometry'), 4326)::geography as ground
  from feature
), known as (
  select
    field.*,
    kind.id as kind_id,
    kind.crossing_group,
    kind.carrier,
    kind.guard_days,
    -- An annual has no year without flowers, whatever it is called.
    flowering = 'yes' or flowering = 'first-year' and kind.life_cycle = 'annual' as flowers,
    case level when 'home' then home_m when 'sale' then sale_m else stock_m end as published_m,
    case level when 'sale' then sale_is_least when 'stock' then stock_is_least else false end
      as published_is_least
  from field
  -- Left, so that a kind nobody knows stops the load instead of passing unseen.
  left join kind on field.kind in (kind.id, lower(kind.name))
)
select
  id,
  kind_id,
  crossing_group,
  kind_id || '|' || case when variety = '' then '#' || id else variety end
    || case when hybrid in ('true', 'yes') then '|hybrid' else '' end,
  is_source,
  purpose,
  flowering,
  hybrid,
  level,
  not is_source and purpose = 'seed' and flowers and hybrid not in ('true', 'yes'),
  flowers,
  coalesce(isolation_m, published_m),
  isolation_m is not null,
  isolation_m is null and published_is_least,
  case
    when isolation_m is not null then isolation_m
    when published_m is not null and not published_is_least then greatest(
      published_m,
      (select max(at_least_m) from kind_wild where seed_kind = kind_id)
    )
  end,
  -- A window needs both its days.
  case when last_bloom is not null then first_bloom end,
  case when first_bloom is not null then last_bloom end,
  cover,
  carrier,
  guard_days,
  ground
from known;

create index planting_ground on planting using gist (ground);
create index planting_group on planting (crossing_group);
analyze planting;

-- Every directed pair nearer than the seed parent needs, or whose need is not known, with what
-- keeps it apart. The seed parent decides; a distance equal to what it needs passes.
create view isolation_pair as
with near as (
  select p as parent, q as source, st_distance(p.ground, q.ground) as distance_m
  from planting p
  join planting q
    on q.crossing_group = p.crossing_group and st_dwithin(q.ground, p.ground, p.reach_m)
  where p.is_seed_parent and p.reach_m is not null
  union all
  select p, q, st_distance(p.ground, q.ground)
  from planting p
  join planting q on q.crossing_group = p.crossing_group
  where p.is_seed_parent and p.reach_m is null
), pair as (
  select
    near.*,
    -- From a wild kind what its sources ask for, except where the grower typed a distance.
    case
      when (parent).is_typed or (parent).required_m is null then (parent).required_m
      else greatest((parent).required_m, at_least_m)
    end as required_m
  from near
  left join kind_wild on seed_kind = (parent).kind and wild_kind = (source).kind
), days as (
  select
    pair.*,
    -- No figure, or only the least of a laxer level and the pair lies beyond it.
    required_m is null or (parent).is_least and distance_m >= required_m as lacks_figure,
    -- Days both are in bloom, and whole days between two windows that do not overlap.
    greatest(0, least((parent).last_bloom, (source).last_bloom)
      - greatest((parent).first_bloom, (source).first_bloom) + 1) as overlap,
    greatest(0, greatest((parent).first_bloom, (source).first_bloom)
      - least((parent).last_bloom, (source).last_bloom) - 1) as gap,
    (parent).first_bloom is not null and (source).first_bloom is not null as is_dated
  from pair
  where (source).sheds_pollen
    and (parent).id <> (source).id
    and (parent).variety <> (source).variety
    and (required_m is null or (parent).is_least or distance_m < required_m)
    and ((parent).kind = (source).kind or exists (
      select from kind_relation
      where seed_kind = (parent).kind and pollen_kind = (source).kind
    ))
), apart as (
  select
    days.*,
    is_dated and overlap = 0
      and gap >= greatest((parent).guard_days, (source).guard_days) as is_apart,
    -- A perennial dated in another year flowers in this one too: its dates say nothing here.
    (select bool_or(life_cycle = 'perennial') from kind
      where id in ((parent).kind, (source).kind))
      and extract(year from (parent).first_bloom) <> extract(year from (source).first_bloom)
      as is_of_another_year
  from days
)
select
  (parent).id as seed_parent,
  (source).id as pollen_source,
  distance_m,
  required_m,
  case when is_dated then overlap end as overlap_days,
  case when is_dated then gap end as gap_days,
  case
    when is_apart and is_of_another_year is not true then 'time'
    -- Bags and hand pollination keep all pollen out, a cage only what insects carry. A cage keeps
    -- pollen in as well, and takes ground to stand between two; what bags and tape are not on
    -- flowers in the open.
    when (parent).cover in ('bags', 'hand')
      or distance_m > 0 and (parent).cover = 'cage' and (parent).carrier = 'insects'
      or distance_m > 0 and (source).cover = 'cage' and (source).carrier = 'insects' then 'cover'
    when is_dated and not is_apart and not lacks_figure then 'conflict'
    else 'unknown'
  end as standing
from apart;

-- Every directed pair nearer than the ground that keeps plants and harvest apart where pollen asks
-- for none: a published 0 is no licence to touch, and stock seed keeps off other stands of its name.
-- How grave it is, `wideberth check` says (its check `mixing`).
create view mixing_pair as
with pair as (
  select p as parent, q as other, st_distance(p.ground, q.ground) as distance_m,
    kind.strip_m as required_m, 'published zero' as cause
  from planting p
  join kind on kind.id = p.kind
  join planting q
    on q.crossing_group = p.crossing_group and st_dwithin(q.ground, p.ground, kind.strip_m)
  where p.is_seed_parent and p.required_m = 0 and not p.is_typed
    and q.sheds_pollen and q.id <> p.id and q.variety <> p.variety
    and not exists (select from kind_wild where seed_kind = p.kind and wild_kind = q.kind)
    and (p.kind = q.kind or exists (
      select from kind_relation where seed_kind = p.kind and pollen_kind = q.kind
    ))
  union all
  select p, q, st_distance(p.ground, q.ground), kind.same_name_m, 'same name'
  from planting p
  join kind on kind.id = p.kind
  join planting q
    on q.crossing_group = p.crossing_group and st_dwithin(q.ground, p.ground, kind.same_name_m)
  where p.is_seed_parent and p.level = 'stock'
    and q.sheds_pollen and q.is_source and q.variety = p.variety
)
select (parent).id as seed_parent, (other).id as other, distance_m, required_m, cause
from pair
where distance_m < required_m;
