-- A region's isolation register in PostgreSQL with PostGIS: loads newline-delimited GeoJSON and
-- applies Wideberth's isolation rule. See regional-register.md. From the folder of this file:
--
--   psql -d region -v ON_ERROR_STOP=1 -f regional-register.sql < register.ndjson
--   psql -d region -c "select * from isolation_pair where standing = 'conflict'"

create extension if not exists postgis;

-- Kinds of the crop base: crossing group, days between bloom windows, what carries the pollen, and
-- the distance asked for at each purity level (empty: none is known).
create table kind (
  id text primary key,
  name text not null,
  crossing_group text not null,
  carrier text not null,
  guard_days integer not null,
  home_m double precision,
  sale_m double precision,
  stock_m double precision
);
\copy kind from 'regional-kinds.csv' with (format csv, header)

-- How readily two unlike kinds of one group cross: freely, sometimes, rarely. "no" is left out.
create table kind_relation (
  seed_kind text not null references kind,
  pollen_kind text not null references kind,
  relation text not null,
  primary key (seed_kind, pollen_kind)
);
\copy kind_relation from 'regional-relations.csv' with (format csv, header)

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
  is_seed_parent boolean not null,
  sheds_pollen boolean not null,
  -- Distance this planting's seed needs; null: not known.
  required_m double precision,
  first_bloom date,
  last_bloom date,
  cover text not null,
  carrier text not null,
  guard_days integer not null,
  ground geography(geometry, 4326) not null
);

insert into planting
with feature as (
  select line, ltrim(feature, e'\x1e\uFEFF')::jsonb as f
  from register_line
  where trim(both e'\x1e\uFEFF \t\r' from feature) <> ''
), field as (
  select
    coalesce(f ->> 'id', 'feature-' || row_number() over (order by line)) as id,
    lower(trim(f -> 'properties' ->> 'kind')) as kind,
    lower(trim(coalesce(f -> 'properties' ->> 'variety', ''))) as variety,
    coalesce(f -> 'properties' ->> 'purpose', 'seed') as purpose,
    coalesce(f -> 'properties' ->> 'flowering', 'yes') as flowering,
    coalesce(f -> 'properties' ->> 'hybrid', 'false') as hybrid,
    coalesce(f -> 'properties' ->> 'cover', 'none') as cover,
    coalesce(f -> 'properties' ->> 'level', 'home') as level,
    (f -> 'properties' ->> 'isolationM')::double precision as isolation_m,
    (f -> 'properties' ->> 'bloomStart')::date as first_bloom,
    (f -> 'properties' ->> 'bloomEnd')::date as last_bloom,
    f -> 'geometry' ->> 'type' = 'Point' as is_source,
    st_setsrid(st_geomfromgeojson(f -> 'geometry'), 4326)::geography as ground
  from feature
)
select
  field.id,
  kind.id,
  kind.crossing_group,
  kind.id || '|' || case when variety = '' then '#' || field.id else variety end,
  not is_source and purpose = 'seed' and flowering = 'yes' and hybrid not in ('true', 'yes'),
  flowering = 'yes',
  coalesce(isolation_m, case level when 'home' then home_m when 'sale' then sale_m else stock_m end),
  -- A window needs both its days.
  case when last_bloom is not null then first_bloom end,
  case when first_bloom is not null then last_bloom end,
  field.cover,
  kind.carrier,
  kind.guard_days,
  ground
from field
-- Left, so that a kind nobody knows stops the load instead of passing unseen.
left join kind on field.kind in (kind.id, lower(kind.name));

create index planting_ground on planting using gist (ground);
create index planting_group on planting (crossing_group);
analyze planting;

-- Every directed pair nearer than the seed parent needs, or whose need is not known, with what
-- keeps it apart. The seed parent decides; a distance equal to what it needs passes.
create view isolation_pair as
with pair as (
  select p as parent, q as source, st_distance(p.ground, q.ground) as distance_m
  from planting p
  join planting q
    on q.crossing_group = p.crossing_group and st_dwithin(q.ground, p.ground, p.required_m)
  where p.is_seed_parent and p.required_m is not null
  union all
  select p, q, st_distance(p.ground, q.ground)
  from planting p
  join planting q on q.crossing_group = p.crossing_group
  where p.is_seed_parent and p.required_m is null
), days as (
  select
    pair.*,
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
    and ((parent).required_m is null or distance_m < (parent).required_m)
    and ((parent).kind = (source).kind or exists (
      select from kind_relation
      where seed_kind = (parent).kind and pollen_kind = (source).kind
    ))
)
select
  (parent).id as seed_parent,
  (source).id as pollen_source,
  distance_m,
  (parent).required_m,
  case when is_dated then overlap end as overlap_days,
  case when is_dated then gap end as gap_days,
  case
    when is_dated and overlap = 0
      and gap >= greatest((parent).guard_days, (source).guard_days) then 'time'
    -- Bags and hand pollination keep all pollen out, a cage only what insects carry.
    when (parent).cover in ('bags', 'hand')
      or (parent).cover = 'cage' and (parent).carrier = 'insects'
      or (source).cover in ('bags', 'hand')
      or (source).cover = 'cage' and (source).carrier = 'insects' then 'cover'
    when is_dated and (parent).required_m is not null then 'conflict'
    else 'unknown'
  end as standing
from days;
