// SPDX-License-Identifier: MIT
#include "network/feeds_graph.hpp"

#include <algorithm>
#include <array>
#include <boost/graph/adjacency_list.hpp>
#include <boost/graph/breadth_first_search.hpp>
#include <boost/graph/reverse_graph.hpp>
#include <boost/graph/topological_sort.hpp>

namespace doorcard {
namespace {

constexpr std::array kinds = {ThingKind::source,  ThingKind::panel,  ThingKind::breaker,
                              ThingKind::circuit, ThingKind::outlet, ThingKind::load};

std::size_t place_of(ThingKind kind) {
    return static_cast<std::size_t>(std::find(kinds.begin(), kinds.end(), kind) - kinds.begin());
}

}  // namespace

struct FeedsGraph::Graph {
    using Type = boost::adjacency_list<boost::vecS, boost::vecS, boost::bidirectionalS>;
    Type feeds;
};

FeedsGraph::FeedsGraph(const std::vector<std::size_t>& counts, const std::vector<Feed>& feeds,
                       const std::vector<Feed>& back_feeds)
    : first_{0}, graph_(std::make_unique<Graph>()) {
    for (const std::size_t count : counts) first_.push_back(first_.back() + count);
    graph_->feeds = Graph::Type(first_.back());
    for (const Feed& feed : feeds) boost::add_edge(vertex(feed.from), vertex(feed.to), graph_->feeds);
    std::vector<std::size_t> sorted;
    try {
        boost::topological_sort(graph_->feeds, std::back_inserter(sorted));
    } catch (const boost::not_a_dag&) {
        sorted.clear();
    }
    for (auto v = sorted.rbegin(); v != sorted.rend(); ++v) order_.push_back(thing(*v));
    for (const Feed& feed : back_feeds) boost::add_edge(vertex(feed.from), vertex(feed.to), graph_->feeds);
}

FeedsGraph::~FeedsGraph() = default;

std::size_t FeedsGraph::vertex(Thing thing) const { return first_[place_of(thing.kind)] + thing.index; }

Thing FeedsGraph::thing(std::size_t vertex) const {
    const auto after = std::upper_bound(first_.begin(), first_.end(), vertex);
    const auto kind = static_cast<std::size_t>(after - first_.begin()) - 1;
    return {kinds[kind], vertex - first_[kind]};
}

std::vector<Thing> FeedsGraph::things_where(const std::vector<bool>& reached) const {
    std::vector<Thing> things;
    for (std::size_t v = 0; v < reached.size(); ++v)
        if (reached[v]) things.push_back(thing(v));
    return things;
}

namespace {

/// Marks all that a breadth-first search reaches; black vertices are closed to it.
template <class Graph>
std::vector<bool> reached_from(const Graph& graph, const std::vector<std::size_t>& starts,
                               const std::vector<std::size_t>& closed) {
    const std::size_t count = boost::num_vertices(graph);
    std::vector<boost::default_color_type> colors(count, boost::white_color);
    const auto color_map = boost::make_iterator_property_map(colors.begin(), boost::get(boost::vertex_index, graph));
    for (const std::size_t v : closed) colors[v] = boost::black_color;
    boost::queue<std::size_t> queue;
    for (const std::size_t v : starts)
        if (colors[v] == boost::white_color)
            boost::breadth_first_visit(graph, v, queue, boost::make_bfs_visitor(boost::null_visitor()), color_map);
    for (const std::size_t v : closed) colors[v] = boost::white_color;
    std::vector<bool> reached(count);
    for (std::size_t v = 0; v < count; ++v) reached[v] = colors[v] == boost::black_color;
    return reached;
}

}  // namespace

std::vector<Thing> FeedsGraph::downstream(std::span<const Thing> from, std::span<const Thing> opened) const {
    std::vector<std::size_t> starts;
    std::vector<std::size_t> closed;
    for (const Thing& thing : from) starts.push_back(vertex(thing));
    for (const Thing& thing : opened) closed.push_back(vertex(thing));
    return things_where(reached_from(graph_->feeds, starts, closed));
}

std::vector<Thing> FeedsGraph::upstream(Thing thing) const {
    return things_where(reached_from(boost::make_reverse_graph(graph_->feeds), {vertex(thing)}, {}));
}

}  // namespace doorcard
